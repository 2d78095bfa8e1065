import{A as rm,B as sm,C as Jt,D as am,E as lm,F as um,G as re,H as we,I as dm,J as cm,K as ft,L as mn,M as ji,N as Kt,O as jl,P as pm,Q as mm,S as fm,T as hm,U as gm,a as Up,b as zp,c as j,d as y,e as Jp,f as cs,g as An,h as ps,i as Me,j as qo,k as Kp,l as Vp,m as Ei,n as Qp,o as Gp,p as Ni,q as Yp,r as Zp,s as ms,t as Xp,u as em,v as tm,w as nm,x as om,y as Pn,z as im}from"./chunk-TQ53HCQU.js";var fs=globalThis,gs=fs.ShadowRoot&&(fs.ShadyCSS===void 0||fs.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,$m=Symbol(),_m=new WeakMap,hs=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==$m)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(gs&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=_m.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&_m.set(n,t))}return t}toString(){return this.cssText}},bm=e=>new hs(typeof e=="string"?e:e+"",void 0,$m);var wm=(e,t)=>{if(gs)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=fs.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Hl=gs?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return bm(n)})(e):e;var{is:Ey,defineProperty:Ny,getOwnPropertyDescriptor:jy,getOwnPropertyNames:Hy,getOwnPropertySymbols:qy,getPrototypeOf:Uy}=Object,_s=globalThis,ym=_s.trustedTypes,zy=ym?ym.emptyScript:"",Jy=_s.reactiveElementPolyfillSupport,Hi=(e,t)=>e,ql={toAttribute(e,t){switch(t){case Boolean:e=e?zy:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},km=(e,t)=>!Ey(e,t),vm={attribute:!0,type:String,converter:ql,reflect:!1,useDefault:!1,hasChanged:km};Symbol.metadata??=Symbol("metadata"),_s.litPropertyMetadata??=new WeakMap;var fn=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=vm){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Ny(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=jy(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);r?.call(this,l),this.requestUpdate(t,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??vm}static _$Ei(){if(this.hasOwnProperty(Hi("elementProperties")))return;let t=Uy(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Hi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Hi("properties"))){let n=this.properties,o=[...Hy(n),...qy(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Hl(i))}else t!==void 0&&n.push(Hl(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return wm(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:ql).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:ql;this._$Em=i;let d=l.fromAttribute(n,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??km)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};fn.elementStyles=[],fn.shadowRootOptions={mode:"open"},fn[Hi("elementProperties")]=new Map,fn[Hi("finalized")]=new Map,Jy?.({ReactiveElement:fn}),(_s.reactiveElementVersions??=[]).push("2.1.2");var zl=globalThis,xm=e=>e,$s=zl.trustedTypes,Tm=$s?$s.createPolicy("lit-html",{createHTML:e=>e}):void 0,Jl="$lit$",hn=`lit$${Math.random().toFixed(9).slice(2)}$`,Kl="?"+hn,Ky=`<${Kl}>`,ho=document,Ui=()=>ho.createComment(""),zi=e=>e===null||typeof e!="object"&&typeof e!="function",Vl=Array.isArray,Om=e=>Vl(e)||typeof e?.[Symbol.iterator]=="function",Ul=`[ 	
\f\r]`,qi=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Rm=/-->/g,Sm=/>/g,mo=RegExp(`>|${Ul}(?:([^\\s"'>=/]+)(${Ul}*=${Ul}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Dm=/'/g,Am=/"/g,Mm=/^(?:script|style|textarea|title)$/i,Ql=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=Ql(1),S=Ql(2),jO=Ql(3),Be=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Pm=new WeakMap,fo=ho.createTreeWalker(ho,129);function Bm(e,t){if(!Vl(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Tm!==void 0?Tm.createHTML(t):t}var Fm=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=qi;for(let d=0;d<n;d++){let c=e[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===qi?m[1]==="!--"?l=Rm:m[1]!==void 0?l=Sm:m[2]!==void 0?(Mm.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=mo):m[3]!==void 0&&(l=mo):l===mo?m[0]===">"?(l=i??qi,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?mo:m[3]==='"'?Am:Dm):l===Am||l===Dm?l=mo:l===Rm||l===Sm?l=qi:(l=mo,i=void 0);let w=l===mo&&e[d+1].startsWith("/>")?" ":"";r+=l===qi?c+Ky:_>=0?(o.push(p),c.slice(0,_)+Jl+c.slice(_)+hn+w):c+hn+(_===-2?d:w)}return[Bm(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Ji=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,d=t.length-1,c=this.parts,[p,m]=Fm(t,n);if(this.el=e.createElement(p,o),fo.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=fo.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Jl)){let b=m[l++],w=i.getAttribute(_).split(hn),k=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:k[2],strings:w,ctor:k[1]==="."?ws:k[1]==="?"?ys:k[1]==="@"?vs:_o}),i.removeAttribute(_)}else _.startsWith(hn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(Mm.test(i.tagName)){let _=i.textContent.split(hn),b=_.length-1;if(b>0){i.textContent=$s?$s.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],Ui()),fo.nextNode(),c.push({type:2,index:++r});i.append(_[b],Ui())}}}else if(i.nodeType===8)if(i.data===Kl)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(hn,_+1))!==-1;)c.push({type:7,index:r}),_+=hn.length-1}r++}}static createElement(t,n){let o=ho.createElement("template");return o.innerHTML=t,o}};function go(e,t,n=e,o){if(t===Be)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=zi(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=go(e,i._$AS(e,t.values),i,o)),t}var bs=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??ho).importNode(n,!0);fo.currentNode=i;let r=fo.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new Uo(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new ks(r,this,t)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(r=fo.nextNode(),l++)}return fo.currentNode=ho,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Uo=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=go(this,t,n),zi(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==Be&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Om(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&zi(this._$AH)?this._$AA.nextSibling.data=t:this.T(ho.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Ji.createElement(Bm(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new bs(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Pm.get(t.strings);return n===void 0&&Pm.set(t.strings,n=new Ji(t)),n}k(t){Vl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(Ui()),this.O(Ui()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=xm(t).nextSibling;xm(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},_o=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=go(this,t,n,0),l=!zi(t)||t!==this._$AH&&t!==Be,l&&(this._$AH=t);else{let d=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=go(this,d[o+c],n,c),p===Be&&(p=this._$AH[c]),l||=!zi(p)||p!==this._$AH[c],p===u?t=u:t!==u&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},ws=class extends _o{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},ys=class extends _o{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},vs=class extends _o{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=go(this,t,n,0)??u)===Be)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ks=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){go(this,t)}},Cm={M:Jl,P:hn,A:Kl,C:1,L:Fm,R:bs,D:Om,V:go,I:Uo,H:_o,N:ys,U:vs,B:ws,F:ks},Vy=zl.litHtmlPolyfillSupport;Vy?.(Ji,Uo),(zl.litHtmlVersions??=[]).push("3.3.3");var ht=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Uo(t.insertBefore(Ui(),r),r,void 0,n??{})}return i._$AI(e),i};var Gl=globalThis,zo=class extends fn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ht(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Be}};zo._$litElement$=!0,zo.finalized=!0,Gl.litElementHydrateSupport?.({LitElement:zo});var Qy=Gl.litElementPolyfillSupport;Qy?.({LitElement:zo});(Gl.litElementVersions??=[]).push("4.2.2");var Lm=()=>{},Yl=!1;function Im(e){Lm=e}function Q(){Yl||(Yl=!0,queueMicrotask(()=>{Yl=!1,Lm()}))}function Wm(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var I=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of Wm(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function A(e,t,n){return Zl(e,Wm(t),n)}function Zl(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let d=[...e],c=Zl(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let r={...e??{}},l=Zl(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Em=e=>cs("GET",`/api/bench?run=${encodeURIComponent(e)}`),Nm=e=>An("/api/bench/tick",e),jm=e=>An("/api/bench/weigh_cup",e),Hm=(e,t)=>An("/api/bench/anew",{run:e,batch:t}),qm=(e,t)=>An("/api/bench/finish",{run:e,batch:t});var ae=(e,t)=>({name:e,label:t,unit:"mm"}),On=ae("height","Floor to brim"),xs={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Xl={block:{words:"Box, loaf or slab",measures:[ae("length","Longer side at the brim"),ae("width","Shorter side"),On,xs,{...ae("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),On]},fluted_cup:{words:"Fluted cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),On,{name:"flutes",label:"Flutes",unit:"",count:!0},ae("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ae("across_flats","Across the flats"),On,xs]},dome:{words:"Bowl",measures:[ae("diameter","Across the brim"),On]},half_ball:{words:"Half ball",measures:[ae("diameter","Across the brim")]},ball:{words:"Ball",measures:[ae("diameter","Across")]},half_ring:{words:"Half ring",measures:[ae("centre_diameter","Ring, middle to middle of the tube"),ae("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ae("outer_floor_diameter","Cup, across the floor"),ae("outer_brim_diameter","Cup, across the brim"),ae("post_floor_diameter","Post, at its foot"),ae("post_brim_diameter","Post, at its top"),On]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ae("height","Height"),ae("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[On,xs],points:{columns:[ae("x","From the left"),ae("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ae("side","Straight edge, tip to round"),On,xs]}},Um=Object.fromEntries(Object.entries(Xl).map(([e,{words:t}])=>[e,t])),Jo=e=>Xl[e]?.measures??[],Mn=e=>Xl[e]?.points;var eu=(e,t)=>String($(e,t)??"").trim(),Ki=e=>eu(e,"/shape/kind"),St=(e,t)=>$(e,`/${t}`)!==void 0,tu=e=>["body","skin"].includes(eu(e,"/mesh/role"));function nt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function zm(e,t){return(Mn(Ki(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Vi(e){return nt(e,"/shape/points").flatMap((t,n)=>zm(e,t).every(Boolean)?[n]:[])}function Ts(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return nt(e,"/shape/points").flatMap((n,o)=>t(zm(e,n))?[o]:[])}var nu=e=>nt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Jm(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=A(t,o,r)};return Mn(Ki(e))&&n("/shape/points",Vi(e)),n("/water/weighings",nu(e)),t}function Rs(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Vi(e):nu(e);return`${n}/${r[Number(o)]??o}${i}`}function Qi(e){let t=[],n=i=>eu(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(St(e,"shape")){let i=Ki(e);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of Jo(i))o(c||n(`/shape/${l}`),d.toLowerCase());let r=Mn(i);r&&o(Vi(e).length>=r.least,`${r.least} points at least`)}if(St(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(nu(e).length>0,"a weighing of water")}return!tu(e)&&!St(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Ve=e=>e.slice(0,e.lastIndexOf("/")+1),ot=e=>e.slice(e.lastIndexOf("/")+1),gn=(e,t)=>{let n=Ve(e);return n?Gy(n+t):t};function Gy(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Dt(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function Ko(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var Yy=["mould","formula","run","file","own_fats","own_tips"];function ou(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?ou(o,i):Yy.includes(n)?[i]:[]})}function iu(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...ou(e)])[n,o]=[A(n,i,void 0),A(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function ru(e,t){let n=["/id",...ou(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?A(i,r,$(t,r)):i,o)}var $o={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?ot(t):Dt(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},bo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>Dt(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},Vo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?ot(t):Dt(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},su=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>ot(o),written:o=>o,is_begun:()=>!0}),Gi=su("studio","studios","name"),Vt=su("fats","fats"),Bn=su("tips","tips","title"),Qe={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>Dt(String(e.name),".json"),written:e=>({...Jm(e),name:String(e.name??"").trim()}),is_begun:e=>St(e,"shape")||St(e,"mesh")};var Km={},Vm={kind:$o,id:"",file:"",version:null,shipped:!1,now:Km,saved:Km,unanswered:[]},Fe={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Vm,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(ev()),folded:new Set,units:Zy(),announcement:""},a=Fe;function Zy(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var au=e=>`numbers ${String(e.now.id??e.file)}`,Xy=e=>({numbers:localStorage.getItem(au(e))??void 0,figure:""});function Yi(e){f({quote_wish:{...Fe.quote_wish,...e}});let{numbers:t}=Fe.quote_wish;t?.trim()?localStorage.setItem(au(Fe.run),t):localStorage.removeItem(au(Fe.run))}var Qm="set-up ";function ev(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function tv(){let e=[...Fe.open].filter(t=>t.startsWith(Qm));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Fe,e),Q()}var B=e=>f({announcement:e});function v(e,t){Object.assign(e,t),Q()}function Qt(e,t){let{[e]:n,...o}=Fe.formulas;f({formulas:t?{...o,[e]:t}:o})}function He(e,t){let n=new Set(Fe[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(Qm)&&tv()}function Qo(e=Vm){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:Xy(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function le(e){Fe.open.has(e)||f({open:new Set(Fe.open).add(e)})}function wo({list:e,called:t},n,o={}){if(!Fe.files)return;let i=Fe.files[e].findIndex(d=>d.file===n),r={...i<0?{}:Fe.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Fe.files[e].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Fe.files,[e]:l}})}var nv=1e4,lu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",lu);var Ss=[],Go=()=>`bench ${a.files?.folder??""}`;function it(){try{return[...JSON.parse(localStorage.getItem(Go())??"[]"),...Ss]}catch{return Ss}}function uu(e){try{e.length?localStorage.setItem(Go(),JSON.stringify(e)):localStorage.removeItem(Go()),Ss=[]}catch{Ss=e}}var ov=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function Gm(e){let t={...e,id:crypto.randomUUID(),tab:lu,at:Date.now()};uu([...it().filter(n=>!ov(n,t)),t])}var Ds=e=>uu(it().filter(t=>!e(t))),Ym=(e,t)=>uu(it().map(n=>n.run===e?{...n,run:t}:n)),du=()=>it().find(e=>e.tab===lu||Date.now()-e.at>nv);var me=["pour","pipe","apart"],ye=["studio","own_fats","own_tips"],As=e=>ye.includes(e);var cu=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],pu=()=>ye.flatMap(e=>a.beside[e]??[]),Zm=e=>e.filter(t=>t.theirs),_n=e=>Zm([...cu(e==="apart"?["apart"]:["pour","pipe"]),...pu()])[0],Ps=()=>[a.run,...cu(me),...pu()].filter(e=>e.is_taken&&!e.theirs),Os=()=>Zm([a.run,...cu(me),...pu()]);var Zi=()=>a.formulas.apart?"apart":"run",Xm=e=>f({dangers:{...a.dangers,[Zi()]:e}});function mu(e){let t=e.cautions.filter(n=>n.severity==="danger");Xm(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function ef(e){e.lye_heavy&&Xm([{text:j(e),is_of_heat:!1}])}var tf={};function At(e,t){(tf[e]??=[]).push(t)}function ke(e,t){for(let n of tf[e]??[])n(t)}async function gt({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:w=[]}=a.files??{},k=Ko(t,[...d,...c,...p,...m,..._,...b,...w]);r?.(k);let K=await iv({file:k,version:null,text:n,from:o,goes_on:i});if(wo(e,k,we(K.there.text)??{}),K.is_new||l?.(K.there))return K.there}}async function iv(e){try{return{is_new:!0,there:await qo(e)}}catch(t){if(!(t instanceof y)||t.status!==409)throw t;return{is_new:!1,there:t.answer}}}var Ms=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function yo({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let d={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(Ms(e)+t,JSON.stringify(d))}catch{}}function fu(e,t){try{return JSON.parse(localStorage.getItem(Ms(e)+t)??"null")??void 0}catch{return}}var Fn=(e,t)=>localStorage.removeItem(Ms(e)+t),nf=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function Bs(e){let t=Ms(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>fu(e,o)??[])}var rv=300,G=e=>e.now!==e.saved;function vo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Ce(e,t,n=t){let o=await hm(t),i=sv(e,JSON.parse(o.text),o.shipped),r=fu(e,n),l=r?.copy&&o.shipped?await av(e,r,i):void 0;if(l)return Fn(e,n),Ce(e,l);let{version:d,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:d,shipped:c,now:i,saved:i,unanswered:[]};return r&&lv(p,r,o),p}var sv=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function av(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=we(t.text),i=we((await Me(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return iu(e.written(o),i)?t.copy:void 0}function lv(e,t,n){let o=we(t.text);if(!o||re(o)===re(e.now))return Fn(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),cf(e,n))}function Re(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),yo(e),ke("edited",{file:e,before:n})}var of=new WeakMap,hu=async e=>of.get(e),Gt=e=>rf(e,()=>uv(e)),Cn=e=>rf(e,()=>e.shipped?sf(e,af):Promise.resolve());function rf(e,t){let n=hu(e).then(t);return of.set(e,n.catch(()=>{})),n}async function uv(e){!G(e)||e.theirs||await sf(e,e.shipped||!e.file?af:lf)}async function sf(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&v(e,{failed:j(n.complaint)}),n}}async function af(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await gt({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>yo(e,m),is_own:({text:m})=>i!==void 0&&iu(r,we(m)??{})}),d=JSON.parse(l.text),c=ru(r,d),p=e.now===o?d:c(e.now);Fn(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),G(e)&&yo(e),i!==void 0&&ke("copied",{file:e,from:i,renamed:c})}async function lf(e){let{version:t,now:n}=e,o=re(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Fs(e,n,(await qo({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;uf(e,i.answer),G(e)&&!e.theirs&&await lf(e)}}function Fs(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),G(e)?yo(e):Fn(e.kind,e.id),wo(e.kind,e.file,t)}function uf(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return Fs(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=G(e)||e.theirs?void 0:we(n);i?dv(e,i,t):cf(e,{version:t,text:n})}function dv(e,t,n){ke("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),Fs(e,t,n),B(`${e.file} was changed outside this page, and stands here as it is now.`),ke("gave_way",{file:e})}var df=e=>v(e,{set_aside:void 0,is_taken:void 0});function cf(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),yo(e),B(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),ke("conflict",{file:e})}function pf(e){if(!e.theirs)return;let t=we(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}ke("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Fs(e,t,e.theirs.version),ke("gave_way",{file:e})}function mf(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),yo(e),ke("unwritten",{file:e}))}var ko=({theirs:e})=>e?.text===null;function ff(e){ko(e)&&(Fn(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),B(`${e.file} stays deleted.`),ke("left_deleted",{file:e}))}function hf(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;Re(e,t),v(e,{set_aside:o?void 0:n})}var gf=e=>(e.theirs??e).version;function _f(e,t){v(e,{id:t,file:t}),ke("renamed",{file:e,renamed:n=>n})}async function $f(e){let{version:t,text:n}=await Me(e.file),o=we(n);if(!o||e.theirs||t===e.version)return;let i=ru(e.now,o);if(G(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),ke("renamed",{file:e,renamed:i})}var bf=e=>e.shipped||!e.file?[]:[[e.file,gf(e)]];async function gu(e,t,n,o){let i=e.file,r=()=>gf(e)===t&&e.file===i;if(!r()||(await hu(e),!r()))return!1;o(),await _u();let l=await cv(i,n);return await hu(e),r()&&(uf(e,l),G(e)&&!e.theirs&&ke("unwritten",{file:e})),!0}async function cv(e,t){let n=await t(e);return n===null?{version:n,text:null}:Me(e)}var _u=()=>new Promise(e=>setTimeout(e,rv));var pv=400,mv=2e3,bu=new WeakMap;function yf(e,t){clearTimeout(bu.get(e)),bu.set(e,window.setTimeout(()=>{Yt(e)},t))}var Ln=(e=a.run)=>yf(e,pv),fv=e=>e===a.run||e===a.order?.open;async function Yt(e=a.run){clearTimeout(bu.get(e));try{await Gt(e),G(e)&&!e.theirs&&fv(e)&&Ln(e)}catch(t){if(!(t instanceof y))throw t;t.may_pass&&yf(e,mv)}}async function Pt(){for(let e of[a.run,a.order?.open])e?.file&&G(e)&&await Yt(e)}var wf=Promise.resolve(),$u=0;function Zt(){if(!$u&&!hv().length)return;++$u;let e=wf.then(gv).finally(()=>--$u);return wf=e.catch(()=>{}),e}var hv=()=>[...me.map(e=>a.formulas[e]),...ye.map(e=>a.beside[e])].filter(e=>e!==void 0&&G(e)&&!e.theirs);async function gv(){for(let e of me){let t=a.formulas[e];!t||!G(t)||t.theirs||(t.shipped&&e!=="apart"&&await Cn(a.run),await Gt(t))}for(let e of ye){let t=a.beside[e];t&&G(t)&&!t.theirs&&await Gt(t)}}var Ot=e=>gn(a.run.file,e);function Ge(e,t){let n=Ot(e);return t?.some(o=>o.file===n)?n:e}function vf(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=Ge(String(n?.mould??""),a.files?.moulds);return{file:Ko("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},..._v(t)}}}function _v(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var In=({lines:e})=>Array.isArray(e)?e:[];function $n(e){let t=In(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Mt=new Map,Xi=new Set,$v={changed:{},unreadable:[]},Yo=()=>new Set([...me.flatMap(e=>a.formulas[e]??[]),...ye.flatMap(e=>a.beside[e]??[])]);function Zo(){let e=wv(),t=new Set([...Yo()].map(({file:o})=>o));for(let o of Mt.keys())!e.has(o)&&!t.has(o)&&Mt.delete(o);for(let o of Xi)e.has(o)||Xi.delete(o);let n=[...e].filter(o=>!Mt.has(o));return n.length?bv(n):void 0}async function bv(e){for(let[t,n]of await kf(e))Mt.has(t)||Mt.set(t,n)}async function kf(e){let t=e.filter(o=>!Xi.has(o)),n=t.length?await Ni(new Map(t.map(o=>[o,null]))):$v;return vu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var wu=async e=>(await kf([e])).get(e)??null,yu=()=>new Map([...Mt].filter(([e])=>!Xi.has(e)));function wv(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(Ot(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(Ot("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of Yo()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Ve(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of yv())e.add(o);for(let o of ye)e.delete(a.beside[o]?.file??"");return e}function yv(){let{open:e}=a.order??{},t=new Set(e?In(e.now).map(({run:p})=>gn(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(gn(e.file,"studio.json")),t.delete(a.run.file),t}function xf(e,{changed:t}){let n=Object.keys(t).filter(o=>Mt.has(o)&&Mt.get(o)===e.get(o));for(let o of n)Mt.set(o,t[o]);return n}var vu=e=>e.forEach(t=>Xi.add(t));function Tf(){return[...Yo()].flatMap(({file:e,version:t})=>{let n=Mt.get(e)??t;return Mt.delete(e),n===t?[]:[e]})}var Rf=0,xo=()=>Rf;function ku(e){++Rf,f({is_old:!0,changed_beside:e})}var vv=1e3,kv=450,Cs=!1,To=!1,xu=0;function ce(){f({is_old:!0}),Cs?To=!0:Xo()}async function Xo(){if(Cs){To=!0;return}Cs=!0,Sf(!1);try{do To=!1,await xv();while(To)}finally{Cs=!1,Sf(!0)}}async function Af(){let{run:e}=a,t={file:e.file,run:e.now},n=await gm(t)?.catch(()=>{});!n||e!==a.run||a.plan||nf()||(f({plan:n,planned:t}),mu(n))}var Sf=e=>{document.documentElement.dataset.settled=String(e)};function Df(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function xv(){let e=Df();try{let t=Zt();t&&await t;let n=Zo();n&&await n,e=Df();let{apart:o}=a.formulas;if(_n(o?"apart":"run"))return f({is_old:!0});let i=xo(),r=o?vf(o.file):{file:a.run.file,run:a.run.now},l=await ms(r);if(window.clearTimeout(xu),!e())return void(To=!0);f({plan:l,planned:r,complaint:void 0}),mu(l);let d=i===xo();f({is_old:To||!d}),d&&f({changed_beside:void 0})}catch(t){if(!(t instanceof y))throw t;if(!e())return void(To=!0);Tv(t)}}function Tv(e){f({is_old:!0}),window.clearTimeout(xu);let t=()=>{f({complaint:e.complaint}),ef(e.complaint)};a.complaint||!a.plan?t():xu=window.setTimeout(t,kv),e.may_pass&&window.setTimeout(ce,vv)}var Pf=2e3,rt=e=>f({bench:{...a.bench,...e}}),Rv=()=>rt({acts:it()});addEventListener("storage",({key:e})=>{e===Go()&&Rv()});function Ls(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:it()}}),bn().then(Su))}function Of(e){let{file:t}=a.run;Ym(e,t),a.bench.run===e&&rt({run:t,acts:it()}),a.bench.run===t&&bn()}function Mf(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var er=0;async function bn(){let{run:e}=a.bench,t=er;try{let n=await Em(e);if(e!==a.bench.run)return;if(t!==er)return await bn();Bf(n)}catch(n){if(!(n instanceof y))throw n;if(e!==a.bench.run)return;rt({failed:j(n.complaint)}),Ff(n)&&setTimeout(()=>a.bench.failed!==void 0&&void bn(),Pf)}}var Bf=({batches:e,version:t,complaints:n=[]})=>rt({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Ff=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),Wn=e=>a.bench.batches.find(t=>t.batch===e),Ru=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),En=e=>Ru(e).length>0;function Nn(e,t){let n=Ru(e).find(i=>i.key===t),o=Wn(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Ro(e){let t=Ru(e).find(n=>n.reading!==void 0);return(t?t.reading:Wn(e)?.weigh_cup)??""}function Cf(e,t,n){let{run:o}=a.bench,r=Wn(e)!==void 0||!a.planned?void 0:re(a.planned.run);Gm({run:o,batch:e,seen:t,text:r,...n}),rt({acts:it(),chosen:e,told:void 0}),Su()}var Lf=(e,t,n,o)=>Cf(e,t,{key:n,done:o}),If=(e,t,n)=>Cf(e,t,{reading:n||null}),Tu=!1;async function Su(){if(!Tu){Tu=!0;try{await navigator.locks.request(Go(),Sv)}finally{Tu=!1}it().length&&setTimeout(()=>{Su()},Pf)}}async function Sv(){for(let e=du();e;e=du())if(!await Dv(e))return}async function Dv(e){let{id:t}=e;try{let n=await Av(e);return++er,Ds(o=>o.id===t),Pv(n,e.run),!0}catch(n){if(!(n instanceof y))throw n;return Ff(n)?(rt({unsent:j(n.complaint)}),!1):(await Ov(e,n),!0)}}function Av({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let d={run:e,text:t,batch:n,seen:o};return i!==void 0?Nm({...d,key:i,done:r??!1}):jm({...d,reading:l??null})}function Pv(e,t){let n=it();if(t!==a.bench.run)return rt({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);rt({acts:n,batches:i,unsent:void 0})}async function Ov(e,{complaint:t}){++er,Ds(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${j(t)}.`;rt({acts:it(),unsent:void 0,told:{batch:e.batch,words:n}}),B(n),ce(),await bn()}async function tr(e){let{run:t}=a.bench;await Wf(e,async()=>{let n=await Hm(t,e);return Ds(o=>o.run===t&&o.batch===e),n})}var Du=e=>Wf(e,()=>qm(a.bench.run,e));async function Wf(e,t){let{run:n}=a.bench;try{let o=await t();if(++er,n!==a.bench.run)return;Bf(o),rt({acts:it(),told:void 0,chosen:e})}catch(o){if(!(o instanceof y))throw o;rt({told:{batch:e,words:j(o.complaint)}})}}var Ef=e=>rt({chosen:e,told:void 0}),Nf=()=>rt({told:void 0});var Mv=300,Bv=1200,Is="",jf=0;function nr(){let e={run:{file:a.run,now:a.run.now}};for(let t of me){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of ye){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function So(e=""){let t=performance.now();e&&e===Is&&t-jf<=Bv&&a.past.length||Au(nr()),f({future:[]}),Is=e,jf=t}var Au=e=>f({past:[...a.past,e].slice(-Mv)});function ei(e){Au(Hf(nr(),e,()=>e.saved??{}))}function Hf(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Pu(e,t){let n=o=>o.map(i=>Hf(i,e,t));f({past:n(a.past),future:n(a.future)})}function or(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,nr()]}),qf(e,"Undone"))}function Ou(){let e=a.future.at(-1);e&&(f({past:[...a.past,nr()],future:a.future.slice(0,-1)}),qf(e,"Redone"))}function qf(e,t){Is="",f({typed:void 0});for(let n of[...ye,...me,"run"])Fv(n,e);B(t)}function Fv(e,t){let n=t[e];if(As(e))return Cv(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Qt(e,n.file),n.file.now!==n.now&&Re(n.file,n.now))}function Cv(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&Re(t.file,t.now)}var ti=e=>e===a.run||me.some(t=>a.formulas[t]===e)||ye.some(t=>a.beside[t]===e);At("giving_way",({file:e})=>{ti(e)&&(Is="",Au(nr()),f({typed:void 0}))});for(let e of["copied","renamed"])At(e,({file:t,renamed:n})=>Pu(t,n));var Lv=1200,Mu="",Uf=0;function ni(e,t=""){let n=performance.now(),o=t&&t===Mu&&n-Uf<=Lv&&e.past.length;v(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[Mu,Uf]=[t,n]}function Ws(e){let t=e.past.at(-1);t&&(v(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),zf(e,t,"Undone"))}function Es(e){let t=e.future.at(-1);t&&(v(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),zf(e,t,"Redone"))}function zf({open:e},t,n){Mu="",f({typed:void 0}),Re(e,t),B(n)}function jn(e){return e==="run"?a.run:e==="order"?a.order?.open:As(e)?a.beside[e]:a.formulas[e]}var Iv=e=>jn(e)?.now,g=(e,t)=>$(Iv(e),t),D=(e,t)=>String(g(e,t)??"");function te(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function fe(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Jf(e,t){e==="order"&&a.order?ni(a.order,t):So(t===void 0?"":`${e} ${t}`)}function Y(e,t,n){let o=jn(e);!o||$(o.now,t)===n||(Jf(e,t),Re(o,A(o.now,t,n)))}function Kf(e,t){let n=jn(e);n&&(Jf(e),f({typed:void 0}),Re(n,t(n.now)))}function Bt(e){So(),f({typed:void 0});for(let[t,n]of e){let o=jn(t);o&&Re(o,n(o.now))}}var Bu=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function Ns(e){for(let t of ye)a.beside[t]===e&&Bu(t,void 0)}async function Wv(e,t){try{let n=await Ce(e,t);return G(n)&&ei(n),n}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function Hn(e,t,n){let o=a.beside[e];if(o?.file===n)return o;let i=await Wv(t,n);return Bu(e,i),i&&G(i)&&ke("unwritten",{file:i}),i?.theirs&&ke("conflict",{file:i}),i}var Qf=()=>Ot("studio.json");async function oi(e=!1){let t=Qf(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await Hn("studio",Gi,t):Bu("studio",void 0))}async function js(){a.run.shipped&&await Cn(a.run);let e=Qf();await Hn("studio",Gi,e)||(await Ev(e),await Hn("studio",Gi,e))}async function Ev(e){try{await qo({file:e,version:null,text:re({schema:"brimwright.studio/1"})})}catch(t){if(!(t instanceof y)||t.status!==409)throw t}wo(Gi,e)}var Vf=(e,t)=>Ve(e.file)+t;async function Nv(e){try{return we((await Me(e)).text)!==void 0}catch(t){if(!(t instanceof y))throw t;return!1}}async function Hs(e){let t=a.formulas[e];if(!t)return;t.shipped&&await Cn(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=Vf(t,n);return Hn("own_fats",Vt,await Nv(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Ve(l.file)===Ve(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Cu(Vt,Vf(t,"my.fats.json"),i);return Y(e,"/own_fats",ot(r)),Hn("own_fats",Vt,r)}async function Fu(){a.run.shipped&&await Cn(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return Hn("own_tips",Bn,Ot(n));let o=Ve(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Ve(d.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Cu(Bn,`${o}my.tips.json`,r);return a.beside.studio?Y("studio","/own_tips",ot(l)):Y("run",e,ot(l)),Hn("own_tips",Bn,l)}async function ir(e,t){await Hn(e===Vt?"own_fats":"own_tips",e,t)&&f({held_open:t})}function qn(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function qs(e,t){let n=e===Vt;await ir(e,await Cu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Cu(e,t,n){let{file:o}=await gt({kind:e,name:t,text:re(n)});return wo(e,o),o}function Gf(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(ot(t));for(let i of me)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Y(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Y("run",o,e.file)}var Do=[],ii=[],rr=()=>Do.at(-1),Iu=()=>ii.at(-1);function zs(e){Do=[...Do,e],ii=[],f({list_told:e.words}),B(e.words)}async function Zf(){let e=rr();e&&(await e.undo(),Do=Do.slice(0,-1),ii=[...ii,e],f({list_told:""}),B("Undone"),await _t())}async function Xf(){let e=Iu();e&&(await e.redo(),ii=ii.slice(0,-1),Do=[...Do,e],f({list_told:e.words}),B("Redone"),await _t())}async function _t(){let[e,t]=await Promise.all([ps(),Qp()]);f({files:e,removed:t})}async function eh(e,t){let{$schema:n,...o}=JSON.parse((await Me(t.file)).text),i=`${t.name||ri(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(vo(e,r)):Dt(i,Wu(t.file)),{file:d}=await gt({kind:e,name:l,text:re(r),from:t.file});await _t();let c="";return zs({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await Us(d,!0),redo:()=>Ei(c)}),d}var Wu=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",ri=e=>ot(e).slice(0,-Wu(e).length||void 0),th=(e,t)=>Ve(e)+t+Wu(e),Yf=e=>[a.run,a.order?.open,...me.map(t=>a.formulas[t]),...ye.map(t=>a.beside[t])].find(t=>t?.file===e);async function nh(e,t,n){let o={name:t.name,note:t.note,stem:ri(t.file)};await Lu(e,t.file,n),await _t();let i=th(t.file,n.stem);zs({words:`Changed ${n.name||i}.`,undo:()=>Lu(e,i,o),redo:()=>Lu(e,t.file,n)})}async function Lu(e,t,{name:n,note:o,stem:i}){let r=Yf(t),l=r??await Ce(e,t),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=e.called?A(p,`/${e.called}`,n||void 0):p;if(re(m)!==re(l.now)&&(r&&ti(r)&&So(),r===a.order?.open&&a.order&&ni(a.order),Re(l,m),await Gt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let _=th(t,i);if(_===t)return;let{renamed_in:b}=await Kp(t,_);r&&_f(r,_);for(let w of b){let k=Yf(w);k&&await $f(k)}}async function Us(e,t){let{removed:n}=await Vp(e,t);a.run.file===e&&Qo(),a.order?.open.file===e&&f({order:void 0});let o=ye.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&Ns(o),n}async function oh(e,t){let n=await Us(e.file,t);await _t(),zs({words:`Removed ${e.name||e.file}.`,undo:()=>Ei(n),redo:async()=>n=await Us(e.file,!0)})}async function ih({removed:e,file:t,name:n}){await Ei(e),await _t();let o="";zs({words:`${n||t} is back.`,undo:async()=>o=await Us(t,!0),redo:()=>Ei(o)})}async function rh({removed:e,file:t,name:n}){f({removed:await Gp(e),list_told:""}),B(`${n||t} is deleted for good.`)}async function Un(){for(let e of["pour","pipe"]){let t=$(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await jv(e,Ge(t,a.files?.formulas)):Qt(e,void 0)}}async function jv(e,t){if(a.formulas[e]?.file===t)return;let n=me.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Qt(e,n),!n)try{let o=await Eu(t);Qt(e,o),G(o)&&ke("unwritten",{file:o}),o.theirs&&ke("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Eu(e){let t=await Ce(Vo,e);return G(t)&&ei(t),t}var sr=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function si(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:d,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function ah(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],w=3*c[p+(_+1)%3],k=d[b+i]-t,K=d[w+i]-t;if(k>0==K>0)continue;let Oe=k/(k-K),po=[1e3*(d[b]+Oe*(d[w]-d[b])),1e3*r*(d[b+o]+Oe*(d[w+o]-d[b+o]))];k>0?m.push(po):m.unshift(po)}m.length===2&&l.push([m[0],m[1]])}return l}function lh(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function ar(e){let t=e.positions,[n,o,i,r,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),d=Math.max(d,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:lh(ah(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function uh(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>lh(ah(e,n+r*o,"level"))).reduce((r,l)=>sh(l)>1.001*sh(r)?l:r)}function sh(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Nu(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var dh=40,Hv=2e3,ju=0;async function ch(e){let t=await Jt({kind:"glb",gauge:e}),n=si(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function ai(e){let[t,n]=await Promise.all([Pn(e),ch(e)]),o=ar(n);return{gauge:t,outline:o,above:uh(n,o)}}async function qv(e){let{pockets:t}=await Pn(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:dh},(i,r)=>`${(n*(r+1)/dh).toFixed(4)} mm`);return Pn({...e,depth:o})}function Ft(){Uv()}async function Uv(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++ju,n=Ge(e,a.files?.moulds);try{let[o,i]=await Promise.all([qv({file:n}),ch({file:n})]);t===ju&&f({measured:{mould:n,gauge:o,outline:ar(i)},measuring_failed:void 0})}catch(o){if(t!==ju)return;if(!(o instanceof y))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Ft,Hv)}}var Hu=(e,t="")=>cs("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(t)}`),ph=e=>An("/api/record/begin",e),Js=e=>An("/api/record/note",e);var zv=1e4,Uu=2500,zu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",zu);var Ks=[],li=()=>`notes ${a.files?.folder??""}`;function wn(){try{return[...JSON.parse(localStorage.getItem(li())??"[]"),...Ks]}catch{return Ks}}function Ju(e){try{e.length?localStorage.setItem(li(),JSON.stringify(e)):localStorage.removeItem(li()),Ks=[]}catch{Ks=e}}var qu=(e,t)=>e.batch===t.batch&&e.key===t.key,zn=(e,t)=>a.record.acts.filter(n=>qu(n,{batch:e,key:t})).at(-1);function mh(e){let t=wn(),n=t.filter(i=>qu(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:zu,at:Date.now()};Ju([...t.filter(i=>!qu(i,e)||i.was_sent&&!i.refused),o])}var Ku=e=>Ju(wn().map(e)),Vs=(e,t)=>Ku(n=>n.id===e?{...n,...t}:n),lr=e=>Ju(wn().filter(t=>!e(t))),Jv=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=Uu),Vu=()=>wn().find(e=>Jv(e)&&(e.tab===zu||Date.now()-e.at>zv));var fh=2e3,Le=e=>f({record:{...a.record,...e}}),ui=()=>Le({acts:wn()});addEventListener("storage",({key:e})=>{e===li()&&ui()});function Qs(){let{file:e}=a.run;!e||a.record.run===e||(f({record:{run:e,batches:[],acts:wn(),chosen:Kv(e)}}),Jn().then(ur))}function hh(e){a.record.run===e&&(Le({run:a.run.file}),Jn())}var gh=e=>`record ${e}`,Kv=e=>sessionStorage.getItem(gh(e))??void 0,Yu=()=>a.record.run===a.run.file?a.record.version:void 0,Gu=0;async function Jn(){let{run:e,chosen:t}=a.record,n=Gu;try{let o=await Hu(e,t);if(e!==a.record.run)return;if(n!==Gu||t!==a.record.chosen)return await Jn();let{batches:i,run_batches:r}=o.record;Le({batches:i,of:r??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof y))throw o;if(e!==a.record.run)return;Le({failed:j(o.complaint)}),_h(o)&&setTimeout(()=>a.record.failed!==void 0&&void Jn(),fh)}}var _h=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function Gs({record:e},t){if(++Gu,t!==a.record.run)return;let n=new Set(e.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>e.batches.find(({begun:c})=>c.id===d.begun.id)??d,r=e.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...r];Le({batches:l,of:e.run_batches??a.record.of})}function Ys(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}function dr(e){sessionStorage.setItem(gh(a.record.run),e),Le({chosen:e}),Jn()}var Ao=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),Zs=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function Xs({blanks:e,cured:t},n){let o=/^cured\.(.+)$/.exec(n)?.[1],i=o&&t?.find(({on:r})=>r===o);return o?i?Zs(i):"":e?.find(r=>r.key===n)?.noted??""}function Zu(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=Xs(e,t),d=zn(e.begun.id,t);if(o===l&&!r&&(!d||!d.was_sent&&d.seen===l))return d&&lr(({id:m})=>m===d.id),ui();if(d?.value===o&&!d.lacks==!r&&(d.refused??!d.is_typed))return;let{run:p}=a.record;mh({run:p,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),ui(),i?ur():setTimeout(()=>{ur()},Uu+50)}var Kn=(e,t,n)=>Zu(e,{key:t,text:n,value:n,is_left:!0});function $h(e){let{refused:t,value:n}=e;if(!t)return;let o=t.is_asked?{confirmed:[n]}:{seen:t.noted??e.seen};Vs(e.id,{...o,refused:void 0}),ui(),ur()}function bh(e){lr(({id:t})=>t===e.id),ui()}var Qu=!1;async function ur(){if(!Qu){Qu=!0;try{await navigator.locks.request(li(),Vv)}finally{Qu=!1}wn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{ur()},fh)}}async function Vv(){for(let e=Vu();e;e=Vu())if(!await Gv(e))return}var Qv=({batch:e,run:t})=>a.record.batches.some(({begun:n})=>n.id===e)?a.record.run:t;async function Gv(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l}=e,d=Qv(e);Vs(t,{was_sent:!0});try{let c=await Js({run:d,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l});return lr(p=>p.id===t),Yv(e,c),Gs(c,d),Le({acts:wn(),unsent:void 0}),!0}catch(c){if(!(c instanceof y))throw c;return _h(c)?(Le({unsent:j(c.complaint)}),!1):(await Zv(e,c),!0)}}function Yv({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);Ku(i=>i.batch!==e?i:i.key===t?o?{...i,seen:Xs(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function Zv({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?r:j(n);d===t?lr(p=>p.id===e):Vs(e,{refused:{words:c,is_asked:o==="confirmed",noted:d}}),ui(),await Jn()}var ea=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function ta(e,t){if(!e||!t)return;let n=e.blanks?e:await Xv(e.begun.id),o=n?.blanks?.filter(Xu)??[];n&&o.length===1&&Kn(n,o[0].key,t)}async function Xv(e){try{return(await Hu(a.record.run,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof y))throw t;return}}var Xu=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var cr=()=>f({own_fats:{}});function Vn(e){let t=pr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function pr(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Ve(t.file)+n,n].includes(o.file))return yh(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(wh(i,"waiting"),ek(n,t.file).then(l=>wh(i,l)),"waiting")}var wh=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function ek(e,t){for(let n of new Set([Ve(t)+e,e])){let o=yh(await tk(n));if(o)return o}return"none"}var yh=e=>Array.isArray(e?.fats)?e.fats.map(nk):void 0;async function tk(e){try{return we((await Me(e)).text)}catch{return}}var nk=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:ok(n)});function ok(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var di=[],mr;function na(){di.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||di.push(e);mr===void 0&&kh()}function vh(e){let t=a.own_moulds[e];return!t&&e!==mr&&!di.includes(e)&&di.push(e),mr===void 0&&di.length&&kh(),t}async function kh(){for(;(mr=di.shift())!==void 0;){let e=mr,t=await ik(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function ik(e){try{let{pockets:t}=await Pn({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Rh=()=>f({own_tips:{}}),ed=!1;function fr(){return!a.tips&&!ed&&(ed=!0,sm().then(e=>f({tips:e}),Sh).finally(()=>ed=!1)),a.tips??[]}function td(e){let t=Ot(e),n=a.beside.own_tips;if(n?.file===t)return Th(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(xh(t,[]),Me(t).then(({text:i})=>xh(t,Th(we(i))),Sh),[])}var xh=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function Th(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Sh(e){if(!(e instanceof y))throw e}var oa=300,rk=5e3,Mh=2e3,sk=500,Dh=!1,hr=new AbortController,Bh=()=>hr.abort(),Fh=()=>document.visibilityState==="hidden";function ia(){if(Dh)return;Dh=!0;let e=async()=>{hr=new AbortController;let t=await ak(hr).then(()=>Fh()?rk:oa,()=>hr.signal.aborted?oa:Mh);await Ah(oa),await Ah(t-oa,hr.signal),e()};e()}var Ah=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),Ch=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Yo()],nd=()=>{let e=Mf();return e&&{...e,record:Yu()}},Lh=()=>new Map(Ch().flatMap(bf)),Ph=()=>JSON.stringify([[...Lh().keys()],[...yu().keys()],nd()?.run??null,Yu()??null]);async function ak(e){let[t]=Tf();t!==void 0&&await Oh(t);let[n,o]=[Lh(),yu()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!Fh()?await lk(i,e):await Ni(i,nd());l.bench!==void 0&&await bn(),l.record!==void 0&&await Jn(),vu(l.unreadable),await uk(n,l);let[d]=xf(o,r?l:await Ni(o));d!==void 0&&await Oh(d)}async function lk(e,t){let[n,o]=[Ph(),Date.now()],i=window.setInterval(()=>{(Ph()!==n||Date.now()-o>Yp+Mh)&&t.abort()},sk);try{return await Zp(e,nd(),t.signal)}finally{window.clearInterval(i)}}async function uk(e,{changed:t}){let n=Yo();for(let o of Ch()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await dk(o,i):await gu(o,i,wu,()=>{}))}}async function dk(e,t){await gu(e,t,wu,()=>ku(e.file))&&(cr(),ce())}async function Oh(e){ku(e),await _u(),cr(),Rh(),f({measured:void 0}),Ft(),na(),await Promise.all([Un(),oi(!0)]),ce()}async function Wh(e){let t=await fm();f({files:t});let n=mm(t,e.run);try{await Xt(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Eh(){let[e,t]=await Promise.all([im(),rm()]);f({fats:e,catalogue:t})}var ck=()=>new Promise(e=>setTimeout(e,400)),od={};async function Xt(e,t="weigh"){if(!e)return f({view:"runs"});let n=od={name:e},o=a.view;a.run.file&&G(a.run)&&await Yt();let i=await Ce($o,e);if(od!==n||(Qo(i),Ls(),await Promise.race([Af(),ck()]),a.run!==i))return;a.view===o&&od===n&&f({view:t}),localStorage.setItem("run",i.file),G(i)&&(ei(i),Ln());let r=Xo().finally(Ft);await Promise.all([r,Un(),oi()]),ia()}var Ih=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function ra(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(o.cut={bar:{thickness:e.slice},...Ih()?{}:{kerf:""}}),Ih()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,t.spoilage!==void 0&&(o.spoilage=t.spoilage),o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await gt({kind:$o,name:Dt(e.name,".run.json"),text:re(o)});le("set-up pour"),e.slice&&le("set-up cut"),await Xt(i,"set-up")}var pk="examples/plain_bars.run.json";function Ye(e){cr();let t=mn(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function gr(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return Ye(t);a.run.file||await Xt(pk,"reading"),await mk(e)}async function mk(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{Qt("apart",await Eu(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),Ye("apart"),Xo()}async function fk(){let e=a.formulas.apart!==void 0;return await sa()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function sa(){return a.formulas.apart?await hk()?(Xo(),!0):!1:!0}async function hk(){try{await Zt()}catch(t){if(!(t instanceof y))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return B("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Qt("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Nh(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&Qt(o,void 0);n&&await sa(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function id(e){let{file:t}=a.formulas.apart;await fk()&&Y("run",`/${e}/formula`,t)}var gk=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),jh=e=>qh(gk(e));async function Hh(e,t){let{$schema:n,...o}=JSON.parse((await Me(e)).text);await qh({...o,name:t},e)}async function qh(e,t){let n=Dt(String(e.name),".formula.json"),{file:o}=await gt({kind:Vo,name:n,text:re(e),from:t});await gr(o)}var _k=30,Uh=0,rd=!1,sd=!1;function ad(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ud()}var en=()=>f({mould:void 0,mesh:void 0}),ci=(e,t,n)=>ad(vo(Qe,e),t,n);async function zh(e,t){let n=await Ce(Qe,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&v(n,{now:{...n.now,name:""}}),ad(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Jh({id:e,file:t,text:n}){let o=t?await Ce(Qe,t,e):vo(Qe,JSON.parse(n),e);ad(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var ie=()=>a.mould,H=()=>ie().open.now;function xe(e,t){ni(ie(),e),Re(ie().open,A(H(),e,t))}var Kh=()=>Ws(ie()),Vh=()=>Es(ie()),$k=["name","note","owned","unmould_after"];function ld(e){let t=H(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!$k.includes(l)))&&v(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&ud()}function ud(){clearTimeout(Uh),Uh=window.setTimeout(()=>{bk()},_k)}async function bk(){if(rd)return void(sd=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!St(t,"shape")&&!St(t,"mesh"))){if(Qi(t).length)return v(e,{complaint:void 0});rd=!0;try{let n=Qe.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await ai(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&dd(n)}finally{rd=!1,sd&&ud(),sd=!1}}}function dd(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;v(ie(),{complaint:{field:Rs(H(),t),line:l,keep:i&&{...i,at:Rs(H(),i.at)},about:r===void 0?void 0:Rs(H(),`${t}/${r}`)}})}var Qh={};async function _r(e){let t=Qh={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&G(a.order.open)&&await Yt(a.order.open);let o=await Ce(bo,e);if(Qh!==t)return;let i=G(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),G(o)&&Ln(o)}a.view===n&&f({view:"order",typed:void 0}),ia()}function Gh(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function Yh(e){let t={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},n=bo.new_name(vo(bo,t)),{file:o}=await gt({kind:bo,name:n,text:re(t)});await _r(o)}var Ie=()=>a.order,Zh=()=>Ws(Ie()),Xh=()=>Es(Ie());var aa=e=>Object.values(a.formulas).includes(e),pi=e=>Object.values(a.beside).includes(e),eg=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function wk(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Ft(),eg(e)!==eg(t)&&Un(),ce(),Ln()}var yk=ce;function vk(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(ot(t))?A(r,o,e.file):r;Pu(a.run,i),i(a.run.now)!==a.run.now&&Re(a.run,i(a.run.now))}}async function kk(e){e===a.run?(Qo(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?en():e===a.order?.open?Gh():pi(e)?Ns(e):await Nh(e),await _t(),a.run.file&&ce()}function tg(){At("edited",({file:e,before:t})=>{e===a.run?wk(t,e.now):aa(e)||pi(e)?yk():e===a.mould?.open?ld(t):e===a.order?.open&&Ln(e)}),At("gave_way",({file:e})=>{if(e===a.mould?.open)return ld();e!==a.order?.open&&(e===a.run&&(Ft(),Un().then(ce)),ce())}),At("left_deleted",({file:e})=>{kk(e)}),At("unwritten",({file:e})=>{e===a.run||e===a.order?.open?Yt(e):(aa(e)||pi(e))&&ce()}),At("conflict",({file:e})=>{(aa(e)||pi(e))&&f({is_old:!0})}),At("renamed",({file:e})=>{pi(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),Ft(),Un()),ce()}),At("copied",({file:e,from:t})=>{aa(e)&&vk(e,t),pi(e)&&Gf(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(Of(t),hh(t),localStorage.setItem("run",e.file),oi().then(ce))})}var st=s`<span aria-hidden="true">⚠</span> Danger`;function $r(e,t="",n){let o=Qn(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${st}</strong> ${i}</p>`)}
  </div>`:u}function Qn(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function ng(){let e=ft(a.view)||a.view==="order"||Zi()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var og=()=>ng().length>0;function ig(){let e=ng(),t=Rk();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${st}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${xk()?s`<button type="button" @click=${Tk}>To the question</button>`:u}
          </div>`:u}
  </section>`}var xk=()=>_n(Zi())!==void 0&&!ft(a.view);function Tk(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Rk(){if(!a.run.file||a.view==="reading")return"";let e=_n(Zi());return e&&ko(e)?`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var yn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},la=e=>(...t)=>({_$litDirective$:e,values:t}),mi=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:Sk}=Cm,rg=e=>e;var ag=e=>e.strings===void 0,sg=()=>document.createComment(""),fi=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(sg(),i),l=o.insertBefore(sg(),i);n=new Sk(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,d=l!==e;if(d){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||d){let c=n._$AA;for(;c!==r;){let p=rg(c).nextSibling;rg(o).insertBefore(c,i),c=p}}}return n},Gn=(e,t,n=e)=>(e._$AI(t,n),e),Dk={},ua=(e,t=Dk)=>e._$AH=t,lg=e=>e._$AH,da=e=>{e._$AR(),e._$AA.remove()};var M=la(class extends mi{constructor(e){if(super(e),e.type!==yn.PROPERTY&&e.type!==yn.ATTRIBUTE&&e.type!==yn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!ag(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Be||t===u)return t;let n=e.element,o=e.name;if(e.type===yn.PROPERTY){if(t===n[o])return Be}else if(e.type===yn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Be}else if(e.type===yn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Be;return ua(e),t}});var qe=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function vn(e,t){let n=qe(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>qe(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function ca(e,t){let n=qe(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var ma=28.349523125,pg=25.4,Ak=29.5735295625;function tn(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function R(e,t){return Pk(tn(e,t))}var Pk=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Ze(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${tn(e,t)} %`:cd(e)?"just below 0 %":"0.0 %"}var cd=e=>e<0||Object.is(e,-0),mg=e=>Math.abs(e-Math.round(e))<1e-6;function ug(e){return e?[0,1,2,3].find(t=>mg(e*10**t))??3:0}function dg(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function Ok(e){return[0,1,2].find(t=>e.every(n=>mg(n*10**t)))??3}function fa(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function he(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Ok([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var fg=.001;function pa(e,t,n,o,i=1e-9){let r=10**n;return tn(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var cg=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Mk(e){if(!cg.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return cg.find(t=>Math.abs(t*ma-e)<.6*fg)}function X(e,t,n="nearest"){let o=t.scale_step_g||.1,i=Mk(o),r=Math.min(.6*fg,o/2),l=i?pa(t.g,1,dg(o),n):pa(t.g,1,ug(o),n,r),d=i?pa(t.g,ma,ug(i),n,r):pa(t.g,ma,dg(o/ma),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??d} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:fa(e,c,p)}var N=(e,t,n=1,o="nearest")=>X(e,{g:t,scale_step_g:10**-n},o);function Ae(e,t,n=1){return fa(e,`${tn(t,n)} ml`,`${tn(t/Ak,2)} US fl oz`)}function Se(e,t){return fa(e,`${R(t,1)} mm`,Bk(t))}function Bk(e){let t=Math.round(Math.abs(e)/pg*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var pd=([e])=>e,P=([e,t])=>t?`${e} (${t})`:e;function hg(e,t){return fa(e,`${tn(t,0)} \xB0C`,`${tn(t*1.8+32,0)} \xB0F`)}function Ct(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??pg;return n*o}function $t(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Ue=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function ne(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Te(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${ne(e)}`}var gg=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),bt=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,ne);function ha(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function Yn(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function bg(e){let t=Ct(e.round?.radius);if(t)return _g(t,S`<circle class="plain" r=${t} />`);let n=Fk(e);if(!n)return u;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?_g(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var _g=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function Fk({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return Ck(e);if(!Array.isArray(t))return;let n=t.map(o=>[$g(o,"x"),-$g(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function $g(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Ct(n.replace(/^-/,""))??NaN)}function Ck({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Ct(t),Ct(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let d=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var md=!1;function wg(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!md&&Ik(),{workings:Lk(n?.workings,e),complaint:n?.complaint,is_old:o}}function Lk(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function Ik(){let{plan:e,planned:t}=a;if(!(!e||!t)){md=!0;try{let{how:n}=await Xp(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{md=!1}}}var yg=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,fd={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${yg}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${yg}<path class="measure" d="M20 10h80" />`}};var hd=e=>`term ${e}`;function kn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(hd(e))?"true":"false"}
    aria-label="What ${fd[e].name} means"
    @click=${()=>He("open",hd(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Lt(e){if(!a.open.has(hd(e)))return u;let{name:t,words:n,drawing:o}=fd[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var Zn=e=>s`<span class="term">${kn(e)}${Lt(e)}</span>`;function F({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:d}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>He("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?s`${kn(d)}${Lt(d)}`:u}
    ${c?s`<div class="sum" id=${p}>${i?ga(i):gd(o)}</div>`:u}
  </div>`}var Po=(e,t,n)=>F({key:e,label:t,shown:["",""],of:n});function gd(e){let{workings:t,complaint:n,is_old:o}=wg(e);return t.length?s`<div class=${o?"old":""}>${t.map(ga)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function ga({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:d,value:c,from:p})=>s`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Oo,br=[],xn=()=>Oo!==void 0;function at(e,t,n,o){if(!Oo||Oo.some(r=>r.id===n))return;let i=br.flatMap(({part:r})=>r??[]);Oo.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:br.flatMap(({fold:r})=>r??[])})}function wt(e,t){br.push(e);try{return t()}finally{br.pop()}}var vg=()=>{},kg=e=>{vg=e},_a,Wk=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function hi(){if(xn())return[];let e=Wk();return _a?.of.length===e.length&&e.every((n,o)=>n===_a.of[o])||(_a={of:e,wanted:Ek()}),_a.wanted}function Ek(){Oo=[],br=[];try{return vg(),Oo}finally{Oo=void 0}}function xg(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function Tg(e,t){if(a.has_asked)return!1;let n=hi().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var J=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function $a(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function We(e,t){let n=$a(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return yt(e)&&!Tg(e,n.field)?j(n):void 0}function ve(e,t){return $a(e)?.field===t?We(e,t):void 0}function yt(e){let t=$a(e),n=jn(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function Nk(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function nn(){let e=$a();if(e)for(let t of["run",...me,...ye])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=We(t,n)&&document.getElementById(J(t,n));if(o)return o}}function jk(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=Hk(e,n);return o&&Ue(t)?`${t.trim()} ${o}`:t}function Hk(e,t){return $t(g(t,e.at))||e.unit||""}var ge=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,_d=!1;addEventListener("pointerdown",()=>_d=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>_d=!1,!0);var qk=()=>f({typed:void 0});function Mo(e){let{id:t}=e.target,n=()=>{qk(),xg(t)};_d?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var Uk=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,zk=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||u;function h(e){let t=e.of??"run",n=J(t,e.at),o=g(t,e.at),i=Uk(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);d&&at(t,e.at,n,e.label);let c=We(t,e.at),p=b=>{let w=b.target.value;f({typed:{key:n,text:w}});let k=jk(e,w);Y(t,k===void 0&&e.takes_part?Nk(t,e.at):e.at,k)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${$d(s`<label for=${n} data-said=${zk(e,d)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${M(l)}
      @input=${p}
      @blur=${Mo}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?u:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ge(n,c,_)} ${e.term?Lt(e.term):u}
  </div>`}var $d=(e,t)=>t?s`<div class="labelled">${e}${kn(t)}</div>`:e;function ze(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var C=e=>()=>document.getElementById(e),ee=(e,t)=>C(J(e,t)),It=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),Jk=()=>document.activeElement;function U(e){requestAnimationFrame(()=>ze(e()))}function lt(e,t,n,o=Jk){B(t),Kf(e,n),U(o)}function E(e,t,n,o,i){lt(e,t,r=>A(r,n,o),i)}var vt=(e,t,n)=>`${J(e,t)}-${n}`;function L(e,t){let n=ve(e,t);return n?s`<p id=${J(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Rg=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ue(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Rg(t,n,o)}</div>`}function T({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?vt(e,n,t.replaceAll(/\W+/g,"-")):J(e,o),w=r===void 0&&!m;w&&at(e,o,b,t);let k=i?void 0:ve(e,o),K=Oe=>{if(Oe===r)return;let po=l.find(([Wy])=>Wy===Oe)[1];E(e,`${t}: ${po}`,n,d(Oe),c&&ee(e,c(Oe)))};return s`<div class="field asked ${k?"wants":""}">
    ${$d(s`<p class="question" id="${b}-label" data-said=${w?"required":u}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${k||p?`${b}-said`:u}
    >
      ${Rg(r,l,K)}
    </div>
    ${ge(b,k,p)} ${_?Lt(_):u}
  </div>`}function bd(e,t,n,o){let i=J("run",e),r=ve("run",e),l=()=>E("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${ge(i,r)}`}function $e({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:d}){let c=J(t,n),p=We(t,n),m=l??D(t,n);!m&&!r&&at(t,n,c,e);let _=!m||o.some(([k])=>k===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?u:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?u:"true"}
      @change=${k=>{let K=k.target.value;d?d(K):Y(t,n,K||!r?K:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([k])=>k||r||!m).map(([k,K])=>s`<option value=${k} .selected=${M(k===m)}>${K}</option>`)}</select
    >${ge(c,p)}
  </div>`}function gi(e,t,n=[]){let o=Ge(D("run",t),n);return $e({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Je({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let d=vt(e,t,"part"),c=vt(e,t,"add"),p=()=>wt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>E(e,`${o} added`,t,r,It(d))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>E(e,`${o} removed`,t,void 0,C(c))}
      >
        Remove
      </button>
    </div>
    ${L(e,t)} ${p()}
  </div>`}var Sg=(e,t)=>`folded ${e} ${t}`,Ee=(e,t)=>le(Sg(e,t));function O({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=Sg(e,t);if(xn())return s`${wt({fold:l},r)}`;(i||n.some(p=>We(e,p)))&&le(l);let d=a.open.has(l);return s`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),He("open",l)}}>${o}</summary>
    ${d?s`<div class="folded">${r()}</div>`:u}
  </details>`}var x=({of:e="run",at:t})=>te(e,t),W=({of:e="run",at:t},n)=>vt(e,`${t}/${n}`,"item"),ba=({of:e="run",at:t},n,o)=>vt(e,`${t}/${n}`,o),Kk=({of:e="run",at:t})=>J(e,t);function wr(e,t,n,o){let{of:i="run",at:r,stays:l,and:d=c=>c}=e;lt(i,t,c=>d(A(c,r,n.length||l?n:void 0),n.length),o)}function q(e,t,n){let o=x(e);wr(e,`${n} added`,[...o,t],It(W(e,o.length)))}function Vk(e,t,n){let o=x(e).filter((l,d)=>d!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);wr(e,`${n} removed`,o,r?C(ba(e,i,"drop")):ee(e.of??"run",e.at))}function Qk(e,t,n,o){let i=[...x(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;wr(e,`${o} moved ${l}`,i,C(ba(e,t+n,c)))}function z(e,t,n){let o=x(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(d,c,p)=>s`<button
      type="button"
      id=${ba(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>Qk(e,t,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${ba(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Vk(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function Z(e,t,n){let o=Kk(e),i=ve(e.of??"run",e.at);return s`${ge(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}var se=()=>a.beside.studio!==void 0,yr=({run:e})=>g("run",e),wd=({studio:e})=>g("studio",e);function vr(e){return yr(e)===void 0&&se()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var on=e=>yr(e)??wd(e),Pe=(e,t)=>h({...t,...vr(e)}),yd=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function kr(e,t=""){return e===void 0||yd(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>kr(o,`${t}/${I(n)}`))}function Tn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&yd($(e,n))&&(e=A(e,n,void 0));return e}var _i=(e,t)=>t.reduce((n,o)=>Tn(A(n,o,void 0),o),e);function Ag(e){let t=new Map;return e.flatMap(n=>kr(yr(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return yd(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function vd(e){se()||await js();let t=Ag(e);Bt([["studio",n=>t.reduce((o,[,i,r])=>A(o,i,r),n)],["run",n=>_i(n,t.map(([o])=>o))]]),B("Kept in the studio")}function Gk(e){let t=e.flatMap(o=>kr(wd(o)).map(([i,r])=>[o.run+i,r]));Bt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?A(i,r,l):i,o)]]),B("Said in this run only")}function Yk(e){let t=e.flatMap(n=>kr(yr(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Bt([["run",n=>_i(n,t)]]),B("Taken from the studio again")}var Dg=e=>kr(e).length>0;function Xn(e,t){if(!se())return u;let n=t.some(r=>Dg(yr(r))),o=t.some(r=>Dg(wd(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Ag(t).length?i("Keep in my studio",()=>{vd(t)}):u}
    ${n&&o?i("As in the studio",()=>Yk(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>Gk(t)):u}
  </span>`}function kd(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>Ge(o,n)===Ge(e,n))??e}var pe=(e,t)=>Object.keys(g(e,t)??{}),Pg=(e,t)=>`${J(e,t)}-name`;function $i({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=Pg(e,t),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",pe(e,t).includes(p))return ze(r(p)());E(e,`${p} added`,`${t}/${I(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function xr({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${J(e,t)}-${pe(e,t).indexOf(n)}-called`;return Td({id:l,name:n,label:o,taken:pe(e,t),take:d=>{let c=p=>i(Tr(p,t,n,d),d);r?r(c,d):lt(e,`${n} is called ${d}`,c)}})}var xd;function Td({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);xd=m?{id:e,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===t)&&(i(p),B(`${t} is called ${p}`),U(C(e)))},d=xd?.id===e?xd.words:void 0;return s`<div class="field ${d?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${M(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>f({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||r?`${e}-said`:u}
    />
    ${ge(e,d,r)}
  </div>`}function Tr(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return A(e,t,Object.fromEntries(i))}function Bo(e,t,n,o=n){let i=r=>Tn(A(r,`${t}/${I(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>lt(e,`${o} removed`,i,C(Pg(e,t)))}
    >
      ×
    </button>
  </div>`}var Fo="/pipe/beads",Et=`${Fo}/tip`,Zk={of:"run",at:Et},rn={at:`${Fo}/moves`,in_order:!0},Rd="\0own",Fg={tip:"",bead_to_opening:"",moves:[]},Wt=(e,t)=>({name:e,label:t,kind:"length"}),Og={name:"count",label:"How many",kind:"count"},Mg=Wt("circle_radius","Radius of their circle"),Sd={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Wt("diameter","Diameter"),Wt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Wt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Wt("start_radius","Radius at the start"),Wt("end_radius","Radius at the end"),Wt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Wt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Og,Mg,Wt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Og,Mg,Wt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Wt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Cg(e){return s`${ex()} ${Dd()?ya(Zk):rx()}
    ${h({label:"Bead \xF7 tip opening",at:`${Fo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(rn).map((t,n)=>px(t,n,e))}</div>
    ${hx()}`}var Dd=()=>typeof g("run",Et)=="object",Ad=()=>String(g("run",`${Fo}/own_tips`)??g("studio","/own_tips")??"");function Xk(){let e=Ad(),t=e?td(e):[];return g("run",`${Fo}/own_tips`)===void 0?[...t,...fr()]:t}function ex(){let e=n=>n===Rd?E("run","a tip of your own",Et,{name:"",round:{radius:""}},nx):Y("run",Et,n),t=Xk().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${$e({label:"Tip",at:Et,answers:[...t,[Rd,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Dd()?Rd:void 0})}
  ${Dd()?u:O({name:"tips",pointers:[`${Fo}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${Fo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var tx=vt("run",Et,"own"),nx=It(tx);async function ox(){let e=g("run",Et);if(!await Fu())return;let t=te("own_tips","/tips"),n=ix(String(e.name).trim()||"My tip",t);Bt([["own_tips",o=>A(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>A(o,Et,n)]]),B(`${n} kept in ${a.beside.own_tips.file}`)}function ix(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...fr()].some(i=>i.name===o))return o}}function rx(){let e=D("run",Et),t=Ad();if(!e||!t||!td(t).some(o=>o.name===e))return u;let n=te("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Fu()}}>Change this tip of my own</button>`:ya({of:"own_tips",at:`/tips/${n}`})}var Bg=[["round","Round"],["star","Star"],["outline","Another outline"]],wa={x:"",y:""},sx={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[wa,wa,wa]};function ya({of:e,at:t}){let n=Bg.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...fe(e,t,n),[r]:sx[r]});return s`<div class="part" id=${vt(e,t,"own")} role="group" aria-label="My own tip">
    ${L(e,t)} ${ax({of:e,at:t})}
    ${T({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:Bg,puts:i})}
    ${o?dx({of:e,at:t},o):u}
    ${O({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>ux({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{ox()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var ax=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):Td({id:J(e,`${t}/name`),name:D(e,`${t}/name`),label:"What you call the tip",taken:te("own_tips","/tips").map(({name:n})=>String(n)),take:n=>lx(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function lx(e,t){let n=D("own_tips",`${e}/name`),o="/hand",i=Ot(Ad())===a.beside.own_tips?.file,r=i&&g("run",Et)===n,l=i&&g("studio",`${o}/${I(n)}`)!==void 0;Bt([["own_tips",d=>A(d,`${e}/name`,t)],...r?[["run",d=>A(d,Et,t)]]:[],...l?[["studio",d=>Tr(d,o,n,t)]]:[]])}function ux({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>E(e,"correction removed",n,void 0,It(vt(e,t,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function dx(e,t){if(t==="outline")return cx(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function cx({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(n).map((o,i)=>s`<div class="row" id=${W(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${z(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Z(n,"One more corner",()=>q(n,wa,"corner"))}`}function px(e,t,n){let o=Sd[String(e.move)],i=`${rn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${W(rn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${z(rn,t,r)}
    </div>
    ${L("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>mx(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${fx(t,n)}
  </div>`}function mx(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function fx(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==x(rn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return F({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:Ae(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function hx(){let e=o=>({move:o,...Object.fromEntries(Sd[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=J("run",rn.at),n=ve("run",rn.at);return x(rn).length||at("run",rn.at,t,"What the tip does"),s`${ge(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(Sd).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>q(rn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function sn(e,t=()=>{}){if(!e.theirs)return u;let n=ko(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{mf(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>ff(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>pf(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function an(e){if(e.theirs||!e.set_aside||ti(e)&&!e.is_taken)return u;let t=()=>{ti(e)&&So(),hf(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>df(e)}>Close</button>`:u}
    </div>
  </section>`}var va={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Ig(e,t){let n=pr(e);if(!Array.isArray(n)||!n.some(d=>d.id===t))return u;let i=te("own_fats","/fats").findIndex(d=>d.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{gx(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return O({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>wt({part:D("own_fats",`${l}/name`)||"Your own fat"},()=>Pd(l))})}async function gx(e,t){await Hs(e),Ee("own_fats",t);let n=te("own_fats","/fats").findIndex(o=>o.id===t);U(C(`f-own_fats-fats-${n}-name`))}var _x=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Pd(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${L("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:D("own_fats",`${e}/kind`)||void 0,answers:_x,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${$x(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${O({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>bx(e)})}`}function $x(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function bx(e){let t=(o,i,r,l)=>{let d=`${e}/${o}`,c=g("own_fats",d)!==void 0,p=()=>E("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${L("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${wx(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var Lg=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function wx(e){let t=Object.keys(g("own_fats",e)??{}),n=Lg.filter(([l])=>!t.includes(l)),o=l=>Lg.find(([d])=>d===l)?.[1]??l,i=l=>`${e}/${I(l)}`,r=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${d?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>E("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${L("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${$e({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&E("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function bi(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var V=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,yx=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Nt(e,{pieces:t,casts:n}){let o=e.cut?V(t,"bar"):V(t,"piece");return n===t?o:`${o} from ${V(n,...yx(e))}`}var vx=e=>e===1?"once":`${e} times`,Od=e=>e.batches.length>1,Ne=e=>e.pieces.batches>1;function jt(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function _e(e){return Ne(e.whole)?`one batch, ${Nt(e.whole,e.batch)}`:""}var Wg=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Md(e,t){return Wg(e)?`${Nt(e.whole,t)}${t.count>1?`, whipped ${vx(t.count)}`:""}`:""}function ka(e,t){let n=Md(e,t);return n&&`one whipping: ${n}`}var Eg=e=>Ne(e.whole)||Wg(e),xa=(e,t)=>`${V(e,"filling")} of ${V(t,"cavity","cavities")}`;var Ng=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Ta(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${jt(t.map(Ng))}.</p>`:u}function wi(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${jt(t.map(Ng))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var Rr={of:"own_fats",at:"/fats",least:1},Ra={of:"own_tips",at:"/tips",least:1},Co=({of:e,at:t})=>te(e,t);function jg(e){return qg(e,Rr,"fats",t=>{let n=`/fats/${t}`;return O({of:"own_fats",name:String(Co(Rr)[t].id),pointers:[n],summary:s`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${kx(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Pd(n)})})}function kx(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function Hg(e){return qg(e,Ra,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${bg(Co(Ra)[t])}
      ${O({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>ya({of:"own_tips",at:n})})}
    </div>`})}function qg(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(Co(t)[l].name||`number ${l+1}`);return s`${sn(e)} ${an(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${wi(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${Co(t).map((l,d)=>s`<div class="held" id=${W(t,d)} role="group" aria-label=${r(d)}>
              ${o(d)} ${z(t,d,r(d))}
            </div>`)}
      </div>
    </section>`}var Bd=(e,t)=>({...va,id:ca(e,t),name:e});function Ug(e){let t=Bd(e,[...a.fats,...Co(Rr)]);q(Rr,t,e),Ee("own_fats",String(t.id)),U(ee("own_fats",`/fats/${Co(Rr).length-1}/source`))}var Fd=e=>({name:e});function zg(e){q(Ra,Fd(e),e);let t=Co(Ra).length-1;Ee("own_tips",`tip ${t}`),U(It(vt("own_tips",`/tips/${t}`,"own")))}var Jg=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},Sa=la(class extends mi{constructor(e){if(super(e),e.type!==yn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let d of e)i[l]=o?o(d,l):l,r[l]=n(d,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=lg(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,w=0,k=r.length-1;for(;_<=b&&w<=k;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[w])c[w]=Gn(i[_],r[w]),_++,w++;else if(d[b]===l[k])c[k]=Gn(i[b],r[k]),b--,k--;else if(d[_]===l[k])c[k]=Gn(i[_],r[k]),fi(e,c[k+1],i[_]),_++,k--;else if(d[b]===l[w])c[w]=Gn(i[b],r[w]),fi(e,i[_],i[b]),b--,w++;else if(p===void 0&&(p=Jg(l,w,k),m=Jg(d,_,b)),p.has(d[_]))if(p.has(d[b])){let K=m.get(l[w]),Oe=K!==void 0?i[K]:null;if(Oe===null){let po=fi(e,i[_]);Gn(po,r[w]),c[w]=po}else c[w]=Gn(Oe,r[w]),fi(e,i[_],Oe),i[K]=null;w++}else da(i[b]),b--;else da(i[_]),_++;for(;w<=k;){let K=fi(e,c[k+1]);Gn(K,r[w]),c[w++]=K}for(;_<=b;){let K=i[_++];K!==null&&da(K)}return this.ut=l,ua(e,c),Be}});async function de(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof y&&await _t().catch(()=>{})}}var Cd=()=>{de(Zf)},Kg=()=>{de(Xf)};function kt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&rr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Cd}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Vg=new Map,Qg=Promise.resolve();function Gg(e,t=""){let n=`${e}
${t}`,o=Vg.get(n);return o||(o=Qg.then(()=>xx(e)),Qg=o,Vg.set(n,o)),o}async function xx(e){try{let t=await Jt({kind:"glb",gauge:{file:e}}),n=si(await t.arrayBuffer());return ar(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof y)return;throw t}}var Ld=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Gg(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void ht(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,d=.04*Math.max(o-n,r-i),c=[n-d,-r-d,o-n+2*d,r-i+2*d];ht(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${sr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Ld);var Ht=(e,t)=>s`<ul class="cards">
    ${Sa(e,({file:n})=>n,t)}
  </ul>`;function ln(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{de(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>Tx(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?Rx(e,r):u}
  </li>`}function Tx({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:ri(n)}:void 0})}function Rx(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{de(()=>Dx(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&ri(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",d=()=>{de(()=>Ax(e,t))};return s`<div class="acts">
    ${Ta(o)} ${n.called?Id(n.called==="for"?"For":"Name",t,"name"):u}
    ${n.name==="tips"?u:Id("Note",t,"note")} ${Id("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{de(()=>Yg(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?Sx(o,t):u}
  </div>`}function Id(e,t,n){let o=`list-${n}`,i=r=>v(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${M(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Sx(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{de(()=>Yg(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Dx(e,t){let n=await eh(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:ri(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function Ax({kind:e,one:t},{name:n,note:o,stem:i}){await nh(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function Yg(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await oh(e,n),f({list_open:void 0})}catch(i){let r=i instanceof y?i.answer.used_by:void 0;if(!r)throw i;v(t,{used_by:r})}}function Da(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?Ht(o,r=>ln({kind:e,one:r,facts:Px(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var Zg=4;function Px({holds:e=[],changed:t}){let n=e.length-Zg,o=n>0?[...e.slice(0,Zg),`${n} more`]:e;return[o.length?jt(o):"",t?`changed ${ne(t)}`:""].filter(Boolean)}var Sr="";function Aa({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(Sr.trim()),Sr="",Q()})},r=l=>{Sr=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${M(Sr)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!Sr.trim()} @click=${i}>${t}</button>
  </div>`}function xt(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(Ox)}
    </ul>
  </details>`:u}function Ox(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${ne(e.removed_at)}, kept until ${ne(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{de(()=>ih(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{de(()=>rh(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>He("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>He("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function e_(){let e=qn();return s`${kt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Da(Vt,"Each file is named by the formulas that use its fats.",t=>ir(Vt,t))}
      ${e?jg(e):u}
      ${Aa({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Ug(t)):qs(Vt,Bd(t,a.fats)),tried:de})}
    </section>
    ${Mx()} ${xt("fats")}`}var Xg="fats that are listed";function Mx(){let e=a.finding?.key===Xg?a.finding.text:"",t=a.fats.filter(n=>vn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${M(e)}
          @input=${n=>f({finding:{key:Xg,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(n=>Bx(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?u:s`<p class="hint">None is called so.</p>`}
  </section>`}function Bx(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=vn(e,t),l=d=>R(d,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var t_=e=>e.goes_into==="lye",n_=({role:e})=>e==="alkali",Fx=e=>n_(e)?"down":"nearest",Lo=(e,t)=>X(e,t,Fx(t));function Pa(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>t_(i)),n=({one:i})=>i.role==="water",o=({one:i})=>n_(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function o_(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!t_(t))}function Wd(e){let t=D(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Wx(e)}
    ${O({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Cx=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],i_={after:"",mass:""},r_=3,Lx={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:r_},()=>i_)}}};function Ix(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Wx(e){let t=Ix(e);return s`${T({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Cx,puts:o=>({...fe(e,"",["drying","water_lost_in_cure"]),...Lx[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?Ex(e):u}`}function Ex(e){let t={of:e,at:"/drying/weighings",least:r_};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(t).map((n,o)=>s`<div class="row named" id=${W(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${z(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${Z(t,"One more weighing",()=>q(t,i_,"weighing"))}`}var Nx=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Oa=e=>Vn(e).map(t=>[t.id,t.name]),s_=["unsaid","Not given"],a_=["none","Holds none"],l_=e=>e===void 0?"unsaid":e==="none"?"none":"some",jx=e=>t=>t==="some"?e:t==="none"?"none":void 0;function u_(e,t){return Ed(e,`${t}/contains_fat`,[s_,a_,["some","Holds fat"]],Oa(e))}function Ed(e,t,n,o){let i=l_(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${T({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:jx({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${$e({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Hx=[s_,a_,["some","Holds acid"],["typed","By what it takes up"]],qx={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Nd(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":l_(g(e,n));return s`${T({of:e,question:"Acid in it",at:n,chosen:o,answers:Hx,puts:i=>qx[i]})}
  ${o==="some"?s`<div class="row">
          ${$e({label:"Which acid",of:e,at:`${n}/acid`,answers:Nx.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?jd(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function jd(e,t,n){let o=g(e,t)===!0?"yes":"no";return T({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Ux=["tsp/lb","tbsp/lb","tsp/kg"],Ma=["%","g/kg",...Ux].flatMap(e=>[`${e} of fats`,`${e} of batter`]),c_=[...Ma,"% of finished soap","g/kg of finished soap"];function d_(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Ba(e,t,n,o,i=!1){let r=J(e,t),[l,d]=d_(D(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&d)&&at(e,t,r,l.trim()?`${n}: of what`:n);let m=We(e,t),_=(w,k)=>{let K=`${w.trim()} ${k}`.trim();Y(e,t,i&&!w.trim()?void 0:K),Q()},b=w=>{let k=w.target.value,[K,Oe]=d_(k,o);f({typed:{key:r,text:k}}),_(K,Oe||d)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${M(c)}
        @input=${b}
        @blur=${Mo}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${M(d==="")}>of what?</option>
        ${o.map(w=>s`<option value=${w} .selected=${M(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${ge(r,m)}
  </div>`}function zx(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Jx=.01+1e-9;function yi(e,t){let{sum:n,unread:o}=zx(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Jx?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var p_=(e,t)=>Vn(e).find(n=>n.id===t)?.name??t,Dr=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Fa=e=>x(Dr(e));function Ud(e){let t=Fa(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Kx(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?yi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:at(e,"/fats",J(e,"/fats"),"The fats")}
    ${n?f_(e):Z(Dr(e),"Add a fat",()=>m_(e,t.length))} ${tT(e)}
  </section>`}function Kx(e,t,n){let o=`/fats/${t}`,i=p_(e,String(n[t].fat??""))||"Which fat?",r=ve(e,`${o}/fat`)??ve(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${W(Dr(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${J(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Hd():m_(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${z(Dr(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?f_(e):u}
    ${Ig(e,String(n[t].fat??""))}
    ${O({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Gx(n[t])}`,body:()=>Xx(e,t)})}
  </li>`}function m_(e,t){f({picking:{of:e,row:t,text:""}}),U(C("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Hd(){let e=a.picking;f({picking:void 0}),e&&U(ee(e.of,e.row<Fa(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function qd(e,t){let{row:n}=a.picking,o=Fa(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};wr(Dr(e),`${p_(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ee(e,`/fats/${n}/share`))}function f_(e){let{row:t,text:n}=a.picking,o=Fa(e).map(m=>m.fat),i=Vx(e,n),r=i.filter(m=>!o.includes(m.id)||o[t]===m.id),l=r.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Hd(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=r.find(w=>qe(w.name)===qe(n.trim())),b=l??(r.length===1?r[0]:_);m.key==="Enter"&&b&&qd(e,b.id)};return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Hd}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=vn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>qd(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{Qx(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function Vx(e,t){let n=Vn(e).filter(l=>vn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>vn(l,d)!==void 0).length,r=Math.max(...Vn(e).map(i));return r?Vn(e).filter(l=>i(l)===r):[]}async function Qx(e,t){if(!await Hs(e))return;let o=t.trim(),i=ca(o,[...a.fats,...te("own_fats","/fats")]),r=te("own_fats","/fats").length;Y("own_fats",`/fats/${r}`,{...va,id:i,name:o}),qd(e,i),Ee("own_fats",i),U(ee("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function Gx(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Yx=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Zx={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Xx(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${T({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Yx,puts:d=>Zx[d],hint:eT(e,D(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?jd(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function eT(e,t){let n=Vn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function tT(e){let t=pr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=D(e,"/own_fats");return O({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var nT=e=>me.includes(e);function Ca(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:hi().some(({of:t,at:n})=>yt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function Ar(){let e=a.complaint?hi():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>oT(t)}>
              ${t.part?s`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function oT({of:e,id:t,folds:n}){for(let o of n)le(o);f({has_asked:!0}),nT(e)?(a.view!=="formula"||a.formula_of!==e)&&Ye(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>U(C(t)))}var h_="danger-of-superfat";function zd(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:Qn(e).length?h_:void 0})}
    </div>
    ${$r(e,h_)} ${iT(e)} ${dT(e,t)}
  </section>`}function iT(e){let t=te(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${T({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>rT(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>sT(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${yi("The two",t.map(i=>i.share))}
        </p>`:u}`}function rT(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function sT(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=ve(e,i)??ve(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${O({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${aT(t.purity_range)}`,body:()=>lT(e,i)})}
  </div>`}var aT=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function lT(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${T({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var uT={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function dT(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(uT);return s`${T({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:pT(t)})}
    <div class="row">${n.map(r=>cT(e,r))}</div>`}function cT(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function pT(e){if(!(!e||a.is_old))return`It now makes a strength of ${R(e.lye_strength_percent,1)} %; ${R(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(e.water_percent_of_fats,1)} % of the fats.`}function eo(e,t,n){let o=mT(e,t);return O({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${hT(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${g_(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>gT(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function mT(e,t){let n=te(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Jd={name:"",share:""},fT={unsaid:void 0,one:"",many:[Jd]};function hT(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...Jd,name:o}]:fT[l];return s`${T({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${g_(e,t,"INCI name","One more INCI name")}`:u}`}function gT(e,t,n){return T({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function g_(e,t,n,o,i){let r={of:e,at:t};return s`${x(r).map((l,d)=>s`<div class="row named" id=${W(r,d)}>
        ${h({label:`${n} ${d+1}`,of:e,at:`${t}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:e,at:`${t}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${d}`,d)??u} ${z(r,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${Z(r,o,()=>q(r,Jd,n))}`}var _T=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:DT},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:vT},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:kT},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:xT}];function Kd(e){return _T.map(t=>{let n={of:e,at:`/${t.list}`},o=x(n),i=(r,l)=>s`<li class="formula-row" id=${W(n,l)}>
        ${bT(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${Z(n,t.add,()=>q(n,$T(t),t.add.replace("Add ","")))}
    </section>`})}function $T(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function bT(e,t,n,o,i){let r=`/${t.list}/${i}`,l=ve(e,r),d=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:Ba(e,`${r}/rate`,"How much",Ma)}
      ${z(n,i,d)}
    </div>`}function __(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return T({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function $_(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${__(e,t,yT,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?T({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:wT,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var wT=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],yT=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Vd(e,t,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return O({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ba(e,`${t}/limit`,"The most that the supplier's document allows",c_,!0)}`})}function Qd(e,t,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return O({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${u_(e,t)} ${o?Nd(e,t):u}`})}var La=(e,t,n)=>eo(e,t,String(n.name||"it"));function vT(e,t,n){return s`${$_(e,t,!0)}
    <div class="folds">${Qd(e,t,n,!0)} ${Vd(e,t,n)} ${La(e,t,n)}</div>`}function b_(e,t,n){return O({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>$_(e,t,!1)})}function kT(e,t,n){return s`<div class="folds">
    ${Vd(e,t,n)} ${La(e,t,n)} ${b_(e,t,n)} ${Qd(e,t,n,!1)}
  </div>`}function xT(e,t,n){return s`${RT(e,t)}
    <div class="folds">
      ${Vd(e,t,n)} ${La(e,t,n)} ${b_(e,t,n)} ${Qd(e,t,n,!0)}
    </div>`}var TT=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function RT(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${T({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${$e({label:"Which oil",of:e,at:`${n}/fat`,answers:Oa(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:TT,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var ST=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function DT(e,t,n){let o=(i,r,l)=>O({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${PT(e,t,n)}
    ${__(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${MT(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>AT(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Nd(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${La(e,t,n)}
    </div>`}function AT(e,t){let n=g(e,t)===!0?"ice":"liquid";return T({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function PT(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...fe(e,t,["replaces","rate"]),[r]:""});return s`${T({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:OT,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Ba(e,`${t}/rate`,"Rate",Ma):u}`}var OT=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function MT(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(d,c)=>h({label:d,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${T({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Ed(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Oa(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${$e({label:"Built-in figures of",of:e,at:n,answers:ST.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var Pr=()=>Object.keys(g("studio","/cups")??{}),Or=()=>Pr().length===1?{net:""}:Pr().length?{cup:"",net:""}:{holds:"",net:""},w_="\0another";function Mr(e,t="Cup holds"){let n=`${e}/holds`,o=Pr();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?BT(e):u}`;let i=l=>l===w_?E("run","Another cup",e,{...Gd(e),holds:""},ee("run",n)):E("run",`Cup: ${l}`,e,{...Gd(e),cup:l}),r=l=>D("studio",`/cups/${I(l)}`);return $e({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[w_,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function Gd(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var BT=e=>s`<button type="button" @click=${()=>E("run","A cup of the studio",e,Gd(e))}>
    A cup of my studio
  </button>`;function v_(){return se()?s`<div class="row">
    ${Pr().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${I(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${FT()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function FT(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||y_();t.value="",E("studio",`${n} added`,`/cups/${I(n)}`,"",ee("studio",`/cups/${I(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${y_()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function y_(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!Pr().includes(t))return t}}var CT=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),Yd=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Ia(e){let{run:t}=Yd(e);return O({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${se()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${Xn("How warm",[Yd(e)])} ${L("run",t)} ${LT(e)}`})}function LT(e){let{run:t,studio:n}=Yd(e),o=d=>({run:`${t}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(d,c,p=i)=>Pe(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${$e({label:"The lye cools in",...vr(l),answers:CT,unsaid:"not given",optional:!0})}
  </div>`}var ut=()=>$(a.run.now,"/pipe")!==void 0;function k_(){let e=t=>{let n=A(t,"/pipe",{formula:"",fills_headspace:"",whip:Or()});return se()?n:A(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};le("set-up pipe"),lt("run","Topping added",e,C("lane-pipe"))}function IT(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:A(o,i,void 0),e)}function WT(){lt("run","Topping removed",IT,C("topping-back"))}function x_(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||ut()?u:s`<button type="button" id="topping-back" @click=${or}>Bring the topping back</button>`}function Zd(){return s`${zT()} ${Ia("pipe")}
    <p class="choice"><button type="button" @click=${WT}>Take the topping away</button></p>`}var ET=["trials","beads","envelope"];function Xd(e){return ET.every(t=>g("run",`/pipe/${t}`)===void 0)&&at("run","/pipe",`${J("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${L("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Je({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Or()},body:NT})}
      ${Je({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:jT})}
    </div>
    ${Je({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Fg,body:()=>Cg(e)})}
    ${e?qT(e):u}`}function NT(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${x(e).map((t,n)=>s`<div class="row" id=${W(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${z(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Z(e,"One more trial",()=>q(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${Mr("/pipe/trials/weigh_cup")}
    </div>
    ${L("run","/pipe/trials/weigh_cup")}`}function jT(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${T({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var HT={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function qT(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>F({key:`pipe.by.${i}`,label:HT[i],note:o(l),shown:Ae(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${UT(e)}`}function UT(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=R(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>E("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function ec(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${Mr("/pipe/whip")}
    </div>
    ${L("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function zT(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return O({name:"pace",pointers:[e],summary:"Piping speed",body:()=>Je({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function JT(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Br(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,JT(e,t))}>It is really so: keep it</button>`:u}var nc=500,KT=()=>$(a.run.now,"/cut")===void 0&&VT()>=nc,VT=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Wa={run:"/cut/kerf",studio:"/kerf"};function T_(e){le("set-up cut"),E("run","Cut","/cut",{bar:tc[e],...se()?{}:{kerf:""}},ee("run",`/cut/bar/${Object.keys(tc[e])[0]}`))}function QT(){E("run","Left whole","/cut",void 0,C("cut-into-bars"))}function R_(){return KT()?s`<button type="button" id="cut-into-bars" @click=${()=>T_("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>T_("slab")}>Cut it into bars</button>`:u}var tc={loaf:{thickness:""},slab:{length:"",width:""}};function GT(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var YT={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function S_(){let e=GT(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return s` ${T({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>tc[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Pe(Wa,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${Xn("Kerf",[Wa])}</p>
    ${e?T({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:YT[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${QT}>Leave it whole</button>`}var Ea=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Na(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${M(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function ZT({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,d=l-r-n,c=[e.left-n,d,e.right-e.left+2*n,-e.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",sr(t,l))}${p("side",sr(e.loops))}
    </svg>
  </div>`}function vi(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${ZT(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${P(Ae(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${P(Ae(a.units,i.total_ml))} together`:u},
      ${P(Se(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${P(Ae(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var XT={mm:"in",g:"oz","\xB0C":"\xB0F"},eR={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ja(e,t,n=""){let o=oc(e);if(o)return o.unit??"";let i=$t($(H(),e));return eR[t]?.test(i)?i:n||(a.units==="us"?XT[t]??t:t)}var Ha=()=>f({typed:void 0}),ki=e=>`d${e.replaceAll("/","-")}`,oc=e=>a.typed?.key===ki(e)?a.typed:void 0,qa=e=>oc(e)?.text??String($(H(),e)??"");function to(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function ic(e,t,n,o){let{pointer:i}=e,r=l=>{let d=l.target.value,c=e.unit?ja(i,e.unit,e.unit_before):"";f({typed:{key:ki(i),text:d,unit:c}}),xe(i,tR(e,d,c))};return s`<input
    id=${ki(i)}
    .value=${M(qa(i))}
    @input=${r}
    @blur=${Ha}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${to(i)?"true":"false"}
  />`}function tR(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Ue(t)?`${t.trim()} ${n}`:t}function dt(e,t){let n=ki(e.pointer),o=to(e.pointer),i=nR(e.pointer)??e.hint,r=e.unit?` (${ja(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${ic(e,o||i?`${n}-said`:void 0,t)}
    ${ge(n,o,i)}
  </div>`}function nR(e){let t=$(H(),e),n=oc(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Ua(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function Fr(e){let{open:t}=ie();try{if(await Gt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await ps()})}catch(n){if(!(n instanceof y))throw n;return dd(n)}a.run.file&&(Ft(),ce()),e(t.file)}var Rn="/shape/points",D_=500,no=(e,t)=>[Rn,e,...t?[t]:[]].join("/"),A_=e=>Array.from({length:e.least},()=>({}));function P_(e){let t=nt(H(),Rn),n=iR(),{complaint:o}=ie(),i=o?.field===Rn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${ja(no(-1,r.name),r.unit,O_(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>oR(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=D_} @click=${()=>Ja(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function oR(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=rR(t),r=l=>{let{name:d,label:c,unit:p}=e.columns[l],m={label:c,pointer:no(t,d),unit:p,unit_before:O_(e,t,d)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return ic(m,i?`point-${t}-said`:void 0,sR(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Ja(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>M_(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function iR(){let e=[...Vi(H()),...Ts(H())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function rR(e){let{complaint:t}=ie();return to(no(e))??(t?.about===no(e)?t.line:void 0)}function O_(e,t,n){let o=(i,r)=>$t($(H(),no(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function za(e,t){queueMicrotask(()=>document.getElementById(ki(no(e,t)))?.focus())}function Ja(e,t){let n=[...nt(H(),Rn)];n.length>=D_||(n.splice(t,0,{}),Ha(),xe(Rn,n),za(t,e.columns[0].name))}function M_(e,t,n=0){let o=nt(H(),Rn).filter((i,r)=>r!==t);Ha(),xe(Rn,o.length?o:[{}]),za(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function sR(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!qa(no(t,o))&&!qa(no(t,i));if(r.key==="Enter"&&r.shiftKey)Ja(e,t+1);else if(r.key==="Enter"&&n===0)za(t,i);else if(r.key==="Enter"&&t+1<nt(H(),Rn).length)za(t+1,o);else if(r.key==="Enter")Ja(e,t+1);else if(r.key==="Backspace"&&l&&nt(H(),Rn).length>1)M_(e,t,t>0?1:0);else return;r.preventDefault()}}var rc={weighings:[""]},sc=/\.(3mf|gltf|glb)$/i;function Ka(e){let t=Mn(e);return t?{kind:e,points:A_(t)}:{kind:e}}var aR=()=>xe("/water",rc),un=e=>St(H(),e),Cr=()=>Ki(H());function B_(e){let{open:t,answer:n,is_old:o}=ie();return s`${sn(t,()=>{Fr(e)})} ${an(t)}
    ${t.shipped?u:wi(a.files?.moulds.find(i=>i.file===t.file))}
    ${un("shape")&&un("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${un("shape")?ue("Shape",Cr(),Object.entries(Um),lR):u}
    <div class="beside ${Mn(Cr())?"rows":""}">
      <div>
        ${ac()} ${un("shape")?dR():u} ${un("mesh")?cR():u}
        ${lc()} ${un("water")?mR():u} ${hR()}
      </div>
      <div class="stays">${vi(n,o,C_())} ${gR(e)}</div>
    </div>`}function lR(e){let t={...ie().shapes,[Cr()]:H().shape};v(ie(),{shapes:t,answer:void 0}),xe("/shape",t[e]??Ka(e))}function uR(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function ac(){let e=uR();return dt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function dR(){let e=Cr(),t=Mn(e);return s`${Jo(e).length?s`<div class="row">
          ${Jo(e).map(n=>dt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?P_(t):u}`}function lc(e=tu(H())){return s`<div class="row">
      ${e?u:dt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${dt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${dt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${dt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var uc=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],dc=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function cR(){let e=o=>String($(H(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=to(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ue(o,e(i),r,d=>xe(`/mesh/${i}`,d||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=to("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${sc.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",uc)} ${t("Which way is up","up",dc)}
    ${e("role")==="body"?pR():u}
    <div class="row">
      ${dt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${dt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function pR(){let e=$(H(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ue("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>xe("/mesh/on_board",t==="yes"?!0:void 0))}`}function mR(){let e=$(H(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>xe("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(H(),"/water/weighed_in"),i=t===void 0||t==="brim"?to("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${dt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ue("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?dt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?dt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ue("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>xe("/water/weighed_in",r))}
    <div class="row">
      ${nt(H(),"/water/weighings").map((r,l)=>dt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},fR(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:u}
    <button type="button" @click=${F_}>One more round</button>`}function F_(){let e=nt(H(),"/water/weighings").length;xe(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var fR=e=>t=>{t.key==="Enter"&&(e+1===nt(H(),"/water/weighings").length?F_():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function hR(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${un("shape")?u:e("Add measures, as a check",()=>xe("/shape",Ka("block")))}
    ${un("shape")&&un("mesh")?e("Leave the measures out",()=>xe("/shape",void 0)):u}
    ${un("water")?e("Leave the water out",()=>xe("/water",void 0)):e("Add weighed water",aR)}
  </div>`}function C_(){let e=Ts(H()).length;return e?[...Qi(H()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Qi(H())}function gR(e){let t=String(H().name??"").trim(),n=Ua(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),d=i&&!r&&!l&&!C_().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{Fr(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${cc(t,n)}
    ${l?s`<p class="alarm" role="status">${_R(l.field)}${l.line}</p>
            ${Br(H(),l.keep,xe)}`:u}`}var cc=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function _R(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Jo(Cr()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var $R=200*2**20;async function L_(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),xe("/name",e.name.replace(/\.\w+$/,"")),e.size>$R){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await lm(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await W_(t)}catch(n){v(t,{complaint:n instanceof y?n.message:String(n)})}}async function W_(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await ai({file:n,unit:o,role:i,up:r});t===e.questions&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(t!==e.questions)return;let d=o?e.sizes:vR(l.complaint),c=d.length&&!o?void 0:j(l.complaint);v(e,{sizes:d,complaint:c,is_measuring:!1})}}async function bR(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await om({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:r})}catch(r){if(!(r instanceof y))throw r;t===e.questions&&v(e,{complaint:j(r.complaint)})}}function wR(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(yR)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{bR(e)}}>List every defect of the mesh</button>`}var yR=({text:e})=>s`<li>${e}</li>`;function vR({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function pc(e,t){v(e,t),W_(e)}function E_(e,t){let n=l=>{let d=l.target;L_(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),L_(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?kR(a.mesh,e,t):u}`}function kR(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!sc.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ue("Unit of the file's numbers",e.unit,i,r=>pc(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?wR(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ue("Role",e.role??e.answer?.gauge.role,uc,r=>pc(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ue("Up",e.up??"",dc,r=>pc(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${vi(e.answer)} ${xR(e,t,n)}`:u}`}var N_=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function xR(e,t,n){let o=String(H().name??"").trim(),i=Ua(o),r=o&&!i&&!e.is_keeping;return s`${ac()} ${lc(N_(e))} ${cc(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>I_(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>I_(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function I_(e,t,n){v(e,{is_keeping:!0});try{let o=TR(e,await um(e.upload,SR(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await RR(o))return t(o);ci(o,"mesh",ie().title),await Fr(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof y?o.message:String(o)})}v(e,{is_keeping:!1})}function TR(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=H();return{...i,...N_(e)||o===void 0?{}:{cavities:o},mesh:n}}async function RR(e){try{return await Pn({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var SR=e=>Ko(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Va={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},j_={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function H_(e){en();let t={...j_,shape:Ka("block")};e==="mesh"?ci(j_,"mesh",Va[e]):ci(e==="water"?{...t,water:rc}:t,"form",Va[e]),Ga()}async function q_(e,t){en(),await zh(e,t),Ga()}async function Qa(e){en(),await Jh(e),Ga()}function DR(e){ci(e,"form","More about this mould"),Ga()}function Ga(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function U_(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?E_(e,DR):B_(e)}
  </section>`}var mc=()=>f({chosen_mould:void 0});function Lr(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),AR(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function AR(e){try{v(e,{answer:await ai({file:e.file})})}catch(t){v(e,{complaint:t instanceof y?t.message:String(t)})}}var PR=e=>a.files?.moulds.find(t=>t.file===e);function z_(e,t){let n=()=>t(async()=>{await q_(e.file,e.shipped),mc()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${Ta(PR(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?vi(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:BR(e,t)}
    </div>
  </section>`}var J_=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=nc;function OR(e){let t=J_(e)?e.slice.trim():"";return Ue(t)?`${t} mm`:t||void 0}var MR=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${M(e.slice)}
      @input=${t=>v(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function BR(e,t){let n=Ea(e.sell),o=OR(e),i=r=>()=>t(()=>ra({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Na("mould-sell",e.sell,r=>v(e,{sell:r}))}
      ${J_(e)?MR(e):u}
    </div>
    ${n?u:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Ir(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l}=a;if(e!=="reading")return mn(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:ji[o],file:t.file,of:t}}async function V_({name:e,file:t}){if(!(!(e===ji.apart&&a.formulas.apart?.file===t)&&!await sa()))try{await FR(e,t)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function FR(e,t=""){let n=e;if(mn(n))return K_(t,n);let o=["pour","pipe"].find(i=>ji[i]===e);if(o){await K_(t,"formula"),a.view==="formula"&&Ye(o);return}if(e===ji.apart)return gr(t);if(e==="order")return _r(t);await CR(e,t)}async function K_(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await Xt(e,t)}async function CR(e,t){let n=e;mc(),en(),f({view:ft(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=Bs(Qe).find(i=>i.id===t);e==="describing"&&o&&await Qa(o),e==="chosen"&&Lr(t),LR()}async function LR(){try{await _t(),na()}catch(e){if(!(e instanceof y))throw e;f({list_complaint:e.message})}}var ct={id:""},je,fc=!1,gc=new Map,Ya=JSON.parse(sessionStorage.getItem("left")??"{}");function G_(){let e=Ir();fc||!e||je&&Kt(je)===Kt(e)||(Za(),Y_(e))}function Y_(e){let t=!je||je.name===e.name&&je.of!==void 0&&je.of===e.of;if(je=e,t)return xi();ct={id:crypto.randomUUID(),before:location.hash},gc.set(ct.id,e.of),history.pushState(ct,"",Kt(e)),requestAnimationFrame(WR)}function xi(){je&&(ct.id||(ct={id:crypto.randomUUID()}),gc.set(ct.id,je.of),history.replaceState(ct,"",Kt(je)))}var IR="button, input, select, summary, a[href], [tabindex]",hc=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),Z_=e=>[...document.querySelectorAll(`#main :is(${IR})`)].filter(t=>hc(t)===e);function Za(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Ya[ct.id]={scroll:scrollY}:Ya[ct.id]={scroll:scrollY,words:hc(e),nth:Z_(hc(e)).indexOf(e)}}function WR(){scrollTo(0,0),document.activeElement?.closest("#main")||X_()}function X_(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function e$(){let{scroll:e,words:t,nth:n=0}=Ya[ct.id]??{scroll:0},o=t===void 0?void 0:Z_(t)[n];o?o.focus({preventScroll:!0}):X_(),scrollTo(0,e)}var pt=e=>t$({name:e,file:mn(e)?a.run.file:void 0});async function t$(e){Za(),await _c(e,()=>{let t=Ir();t&&!(je&&Kt(je)===Kt(t))&&Y_(t)})}async function _c(e,t){fc=!0;try{await V_(e)}finally{fc=!1,t()}}function n$(e){ct.before===Kt(e)?history.back():t$(e)}var Q_=Promise.resolve();function ER(e,t){Za();let n=()=>history.state?.id!==e?.id;Q_=Q_.then(async()=>{if(!t)return xi();if(n())return;let o=e?gc.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await _c(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{je=Ir(),!n()&&(ct=e??{id:crypto.randomUUID()},xi(),requestAnimationFrame(e$))})})}function o$(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Up()||ER(e.state,jl(location.hash))}),addEventListener("pagehide",()=>{Za(),sessionStorage.setItem("left",JSON.stringify(Ya))})}async function i$(){let e=jl(location.hash);e&&(ct=history.state??{id:""}),await Wh(pm(e)),e&&NR(e)&&await _c(e,()=>{je=Ir(),xi(),requestAnimationFrame(e$)}),await Eh()}var NR=e=>!je||Kt(je)===Kt(e);function Ti(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Ca()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Sn(t.field)}${j(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${bc}>Ask again</button>`:u}
              ${yt("run")?Br(a.run.now,t.keep,(n,o)=>Y("run",n,o)):$c(t)}
              ${jR()?s`<button type="button" @click=${wc}>Go to the field</button>`:u}`:u}
    </div>
    ${Ar()}`}function $c({keep:e}){let{studio:t}=a.beside;return t&&yt("studio")?Br(t.now,e,(n,o)=>Y("studio",n,o)):u}function Sn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function bc(){ce(),a.run.failed&&Yt()}function jR(){if(r$())return!0;let e=nn();return e?document.activeElement!==e:HR()}var HR=()=>a.view!=="set-up"&&yt("run")&&a.complaint!==void 0&&a.complaint.field!=="",r$=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&yt(e));function wc(){let e=nn(),t=r$();if(e)return ze(e);t?Ye(t):pt("set-up"),qR(()=>ze(nn()))}function qR(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var s$=()=>[...Os().map(e=>sn(e)),...Ps().map(an)];function a$(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${s$()}${Ti()}
      <p>Reading the formula ...</p>
      ${vc(e)}`;let n=a.plan&&bi(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${s$()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${UR(e)}</p>
    <div class="choice">${vc(e)}${e==="apart"?zR():u}</div>
    ${wi(a.files?.formulas.find(i=>i.file===t.file))} ${JR(e,o,n)} ${u$(e)}
    ${Ud(e)} ${zd(e,o)} ${Kd(e)} ${Wd(e)}
    <div class="choice">${vc(e)}</div>`}var l$=e=>[u$(e),Ud(e),zd(e,void 0),Kd(e),Wd(e)],yc=()=>String(a.run.now.name??a.run.file);function UR(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${yc()}".${n}`:o?`Base and topping of "${yc()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${yc()}".${n}`}function vc(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>n$(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function zR(){return s`<button type="button" @click=${()=>{id("pour")}}>Use it as the base</button> ${ut()?s`<button type="button" @click=${()=>{id("pipe")}}>Use it as the topping</button>`:u}`}function JR(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...KR(e,n),...VR(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?Zn(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${QR(e)}
  </section>`}function KR(e,t){let n=e==="pipe"?Md(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ne(t.whole)?[["For one batch",Nt(t.whole,t.batch)]]:[]}function VR(e,t){let n=Qn(e).length?" \u26A0":"";return[["Fats",P(N(a.units,t.fats_g))],["Superfat as weighed",`${Ze(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Pa(t).map(({one:o})=>[o.name,P(Lo(a.units,o))])]}function QR(e){let t=Ca()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${Ar()}`;let n=yt(e),o=n&&t.field!==""&&document.activeElement!==nn();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Sn(t.field)}${j(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${bc}>Ask again</button>`:u}
      ${o?s`<button type="button" @click=${()=>nn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${Ar()}`}function u$(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${O({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var kc=e=>v(a.new_formula,e);function d$(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>de(async()=>{await i(e.trim()),kc({name:"",copied:""})});return s`${kt("Formulas")}
    <section aria-label="Formulas">
      ${Ht(n,GR)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${M(e)}
            @input=${i=>kc({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(jh)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>kc({copied:i.target.value})}
          >
            <option value="" .selected=${M(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${M(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Hh(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${xt("formula")}`}function GR(e){let t=e.changed?[`changed ${ne(e.changed)}`]:[];return ln({kind:Vo,one:e,facts:t,open:()=>gr(e.file)})}function YR(e){en(),Lr(e,`Saved in ${e}.`)}function c$(){let{chosen_mould:e}=a;return s`${kt("Moulds")}
  ${e?z_(e,de):U_(YR)??s`${t0()} ${ZR()}`}`}function ZR(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Ht([...e,...t],XR)} ${xt("mould")}
  </section>`}function XR(e){let t=e.shipped?e0(e.file):i0(e.file),n=()=>Promise.resolve(Lr(e.file));return ln({kind:Qe,one:e,facts:t,picture:e.file,open:n})}var e0=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${P(Ae(a.units,t.brimful_ml))}, ${V(t.cavities,"cavity","cavities")}; ${t.description}`);function t0(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${n0()}
    <div class="choice">
      ${Object.entries(Va).map(([e,t])=>s`<button type="button" @click=${()=>H_(e)}>${t}</button>`)}
    </div>
  </section>`}function n0(){return Bs(Qe).map(e=>{let t=String(we(e.text)?.name??"").trim()||o0(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>de(()=>Qa(e))}>Continue</button>
        <button type="button" @click=${()=>{Fn(Qe,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var o0=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function i0(e){let t=vh(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[P(Ae(a.units,t.brimful_ml)),V(t.cavities,"cavity","cavities")]:["measuring ..."]}var r0=300,s0=1e3;function Xa(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&a0();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Tc(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var Wr,xc=!1;function a0(){let{plan:e,quote_wish:t}=a;xc||Wr?.of===e&&Wr?.wish===t||(window.clearTimeout(Wr?.timer),Wr={of:e,wish:t,timer:window.setTimeout(()=>{u0()},a.quoted?r0:0)})}var el=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function p$(e,{numbers:t="",by:n,figure:o}){let i=el(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var tl=()=>p$({file:a.run.file,run:a.run.now},a.quote_wish);function l0(e,{numbers:t=""}){return e.field==="/sell"&&el(t)?{...e,file:"",field:"sell"}:e}async function u0(){Wr=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){xc=!0;try{let r=await em(p$(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof y))throw r;if(e!==a.run)return;let l=l0(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Tc,s0)}finally{xc=!1}}}var d0=300,c0=1e3,Sc=e=>{let{by:t,figure:n}=a.quote_wish;return[e.open.now,e.open.file,e.times,t,n,a.plan,xo()]},m$=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function f$(){let e=Ie(),{quoted:t}=e;if(!$n(e.open.now)||e.open.theirs)return{is_old:!0};let n=m$(t?.of,Sc(e));!n&&!a.is_old&&p0(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Dc(){let{quoted:e}=Ie();e&&v(Ie(),{quoted:{...e,of:[]}})}function Ac({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=el(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var nl,Rc=!1;function p0(e){let t=Sc(e);Rc||m$(nl?.of,t)||(window.clearTimeout(nl?.timer),nl={of:t,timer:window.setTimeout(()=>{m0(e)},e.quoted?d0:0)})}async function m0(e){if(nl=void 0,e===a.order){Rc=!0;try{if(await Zt(),await Pt(),await Zo(),!$n(e.open.now))return;let t=Sc(e);await f0(e,t)}catch(t){if(!(t instanceof y))throw t}finally{Rc=!1,v(e,{})}}}async function f0(e,t){try{v(e,{quoted:{of:t,quote:await tm(Ac(e))}})}catch(n){if(!(n instanceof y))throw n;v(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>e===a.order&&Dc(),c0)}}var Ri={of:"order",at:"/lines",in_order:!0,stays:!0};function h$(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${L("order","/lines")} ${x(Ri).map((e,t)=>h0(t))} ${g0()}
  </section>`}var g$=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function _$(e){let t=gn(Ie().open.file,e);return a.files?.runs.find(n=>n.file===t)}var $$=e=>_$(e)?.name||e;function b$(e){let t=In(Ie().open.now).map(({run:n})=>n);return g$().filter(({file:n})=>n===e||!t.includes(n)).map(n=>[n.file,n.name||n.file])}function h0(e){let{run:t}=In(Ie().open.now)[e]??{run:""},n=`/lines/${e}`,o=_$(t)?.pieces,i=t?$$(t):`line ${e+1}`;return s`<div class="row" id=${W(Ri,e)} role="group" aria-label=${i}>
    ${$e({of:"order",label:"Run",at:`${n}/run`,answers:b$(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${V(o,"piece")}`})}
    ${x(Ri).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${z(Ri,e,i)}
  </div>`}function g0(){let e=b$();return g$().length?e.length?s`<div class="row">
    ${$e({of:"order",label:x(Ri).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&q(Ri,{run:t},$$(t))})}
  </div>`:s`${u}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var _0=300,$0=1e3,w$=()=>new Date().toDateString(),b0=()=>({file:a.run.file,run:a.run.now});function w0(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,w$()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??b0(),is_open:()=>e===a.run,keep:n=>f({run_days:n})}}function y0(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,xo(),w$()],is_ready:$n(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await Zt(),await Pt(),await Zo()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>v(e,{days:n})}}var ol=e=>e==="run"?w0():y0(),y$=e=>ol(e).question(),v$=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function il(e){let t=ol(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=v$(n?.of,t.rests_on());!i&&o&&v0(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function Mc(e){let t=ol(e);t?.known&&t.keep({...t.known,of:[]})}var Pc=new Map,Oc=new Set;function v0(e,t){let n=t.rests_on(),o=Pc.get(e);Oc.has(e)||v$(o?.of,n)||(window.clearTimeout(o?.timer),Pc.set(e,{of:n,timer:window.setTimeout(()=>{k0(e)},t.known?_0:0)}))}async function k0(e){Pc.delete(e);let t=ol(e);if(t?.is_ready){Oc.add(e);try{await t.written(),await x0(e,t)}catch(n){if(!(n instanceof y))throw n}finally{Oc.delete(e),f({})}}}async function x0(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let d=await nm(o());i()&&r({of:l,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;r({of:l,days:t?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Mc(e),$0)}}var Ic=864e5,oo=e=>Math.round(Date.parse(`${e}T00:00Z`)/Ic),k$=e=>new Date(e*Ic).toISOString().slice(0,10),T0=e=>new Date(e*Ic).getUTCDay()===1,Fc=40,Cc=18,R0=7,Lc=class{#n;#e;constructor({calendar:t}){this.#n=oo(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(oo(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(T0);return t.filter((n,o)=>o%Math.ceil(t.length/R0)===0).map(k$)}is_at_end=t=>oo(t)-this.#n>.88*this.#e};function x$(e){let t=new Lc(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${Te(n[0].day)} to ${Te(n.at(-1).day)}</p>
    ${Bc(e,t,20,P0(t))}
    <p>Hours of your making days</p>
    ${Bc(e,t,Fc+2,O0(e,t))}
    ${e.batches.map(o=>s`<p>${L0(e,o)}</p>
          ${Bc(e,t,Cc+6,M0(e,t,o))}`)}
    <figcaption>${W0(e)}</figcaption>
  </figure>`}var Bc=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${S0} ${A0(e,t)}
      ${t.mondays().map(i=>S`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${D0(e).map(i=>S`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,S0=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,D0=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),A0=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),P0=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>S`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${gg(t)}</text>`);function O0({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let d=Fc*l/n;return S`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+Fc-d} height=${d} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>S`${o("free",i,r)} ${o("used",i,l)}`)}function M0(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=oo(_)-oo(m);return S`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${Cc} />`},d=o===i,c=(p,m)=>C0(e,p,n).map(_=>S`<circle class=${p} cx=${t.at(_,.5)} cy=${3+Cc/2} r=${m} />`);return S`${l("mould",o,d?k$(oo(o)+1):i)}
    ${oo(i)<oo(r)?l("cure",i,r):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var B0=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),F0=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function C0(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&B0(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?F0(e,n):[]])]}function L0({asked:e,batches:t},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var I0=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,Er=e=>S`<rect class=${e} x="1" y="1" width="24" height="18" />`;function W0({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,Er("used"),"hours used"],[!0,Er("free"),"hours free"],[!0,Er("mould"),"in the mould"],[!0,Er("cure"),"curing"],[e.some(({off:i})=>i),Er("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>I0(i,r))}var E0=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${bt(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${bt(n)}</p>`),Nr=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${P(t)}</b></td>
    <td>${n}</td>
  </tr>`;function N0(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${P(X(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${Te(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${bt(o)};
      ${R(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Nr("Water, distilled",X(t,he(r,"water_")))}
        ${r.alkalis.map(d=>Nr(d.name,X(t,he(d,""),"down")))}
        ${Nr("Lye solution in the pot",X(t,he(r,"lye_")),l)}
        ${r.shares.map(d=>s`${Nr(`Out of it for ${d.batter}`,X(t,he(d,"lye_"),"down"),`superfat then ${Ze(d.superfat_percent)}`)}
            ${d.top_up_g>0?Nr(`and plain water to ${d.batter}`,X(t,he(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${E0(e)}`}var T$=({lyes:e})=>e.map(N0),R$=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var Io=e=>v(a.printing,e);function S$(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function D$(e){if(!a.printing.is_working){Io({is_working:!0,told:"Making it ...",on:a.view});try{await j0(),Io({told:await e()})}catch(t){Io({told:t instanceof Error?t.message:String(t)})}Io({is_working:!1})}}async function j0(){await Zt(),await Pt();let e=a.view==="order"?a.order?.open:void 0,t=_n("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var io=()=>a.printing.on===a.view?a.printing.told:"",Xe=(e,t)=>()=>D$(async()=>{let n=URL.createObjectURL(await Jt(t));return S$(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),H0=e=>()=>D$(async()=>(S$(await am(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),q0=e=>{Io({paper:e}),localStorage.setItem("paper",e)},rl=()=>ue("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],q0),Ke=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,dn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Ke(`${e}, to print`,H0({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Ke(`${e}, PDF`,Xe(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,ro=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var cn={run:"/money/currency",studio:"/currency"},sl={run:"/money/prices",studio:"/prices"},qt=()=>on(cn)!==void 0;function Si(){let[e,t]=[g("run",cn.run),g("studio",cn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[cn,sl]}var al=()=>D("studio",cn.studio)||String(on(cn)??"");async function A$(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=In(n.now).map(({run:r})=>gn(n.file,r)),i=o.find(r=>ll(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>ll(r,t)))&&await Xt(i,"set-up")}var ll=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),P$=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function jr(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(J(e,n));if(o)return o}}var O$=(e,t)=>{le("set-up studio"),Ee("studio",e),pt("set-up"),P$(()=>ze(jr("studio",t)))};async function M$(e){await A$(e),se()||await js(),O$("days","/days/making/monday")}var U0=["order","run","pour","pipe","studio"];async function Wc(e,{file:t,field:n}){if(e==="order"&&ll(a.order.open.file,t))return ze(jr("order",n));await A$(e,t);let o=U0.find(i=>ll(jn(i)?.file??"",t));if(o==="pour"||o==="pipe")Ye(o);else{if(o==="studio")return O$(n.startsWith("/work")&&qt()?"money work":"days",n);if(jr("run",n))return ze(jr("run",n));pt("set-up")}P$(()=>ze(jr(o??"run",n)))}function ul(e){let{days:t,complaint:n,is_old:o}=il(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?z0(e,n):u}
    ${t?s`<div class=${o?"old":""}>${J0(e,t)}</div>
            ${oS(e,o)}`:n?u:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function z0(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${j(t)}</p>
      <button type="button" @click=${()=>Mc(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!se()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{M$(e)}}>To my making days</button>`:["/work","/work/each_batch"].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Wc(e,{...t,field:"/work/each_batch"})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Sn(n)}${bt(j(t))}</p>
    ${n?s`<button type="button" @click=${()=>{Wc(e,t)}}>Go to the field</button>`:u}`}var J0=(e,t)=>s`${tS(t)} ${K0(e,t)} ${x$(t)} ${G0(e,t)} ${T$(t)} ${X0(t)}
  ${eS(t)} ${nS(t)}`,Ec=(e,t,n)=>s`<small>${e?t:n}</small>`;function K0(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${Te(r)}, promise it for <b>${Te(o)}</b>.
        ${Ec(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>ze(document.getElementById(J(e,"/due")))}>
        Give it a due day
      </button>`:n?V0(t):Q0(t)}function V0({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:d}]=e;return s`<p class="when">
      Begin on <b>${Te(t)}</b> at the latest to have ${V(l,"piece")} by
      <b>${Te(r)}</b>.
      ${Ec(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?s`<p>The last day to pour any of it is ${Te(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Te(o)}.
      ${i?u:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function Q0({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${V(o,"piece")} by ${Te(r)}, the rest on <b>${Te(l)}</b>.`:s`none of the ${V(o,"piece")} by ${Te(r)}, all of them on <b>${Te(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Ec(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var G0=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${Te(n.day)} <small>${Y0(n)}</small></h3>
            <ul>
              ${n.acts.map(Z0)}
            </ul>
          </li>`)}
    </ol>
  </details>`,Y0=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${ha(t)} of ${ha(e)}`:"",Z0=({text:e,min:t,caution:n})=>s`<li>
    ${bt(e)}${t?s` <small>${ha(t)}</small>`:u}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function X0({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${Te(i)} at the latest`:`ready by ${Te(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function eS({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${V(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function tS(e){let t=R$(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${st}</strong> ${bt(n)}</p>`)}
  </div>`:u}function nS({notes:e}){let t=e.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?s`<p>${bt(i)}</p>`:s`<p class="minded"><strong>Caution</strong> ${bt(i)}</p>`;return t.length?s`<h3>To mind</h3>
        ${t.map(n)}`:u}function oS(e,t){let n=y$(e),o=ro(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Ke("Calendar file (.ics)",Xe(`${o} days.ics`,{kind:"calendar",days:n}),"",t)}
      ${dn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Ke("Table of the days (.csv)",Xe(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${io()}</p>
  </section>`}var Wo=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,Hr=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function qr(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,d=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:u}
    @click=${()=>He("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${Wo(e)(d,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:u}`}var Ur=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function dl({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var cl=(e,{items:t},n)=>Ur(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),pl=(e,t)=>qr(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${iS(t(n),n.cash)} ${rS(n.cash)}`),iS=(e,t)=>s`${Ur(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:u}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,rS=e=>Ur("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function zr(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var B$=e=>`${R(e,1)} %`;function sS(e){return"margin_percent"in e?`margin ${R(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${R(e.markup_percent,2)} %`:"price as set"}var Nc=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function ml(e,t,{way:n,by:o,ask:i,with_tax:r},l,d=u){let c=i===r,p=Wo(e),m=b=>Nc(n,b),_=(b,w)=>l?s`${w} ${Zn(b)}`:w;return s`<tbody>
    ${Hr(s`<span class="way">${n}</span>, ${sS(o)}`,e)} ${d}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(jc),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>B$(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>B$(b.markup_percent)))}
  </tbody>`}var jc=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function fl(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return zr(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var Hc=e=>e===1?"once":`${e} times`;function F$({times:e,currency:t,has_tax:n},o){let i=Wo(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${Hc(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        <tbody>
          ${Hr("It costs",e)} ${e[0].lines.map((r,l)=>aS(e,l))}
          ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${pl(e,r=>`made ${Hc(r.times)}`)}
        </tbody>
        ${zr(e).map((r,l)=>ml(e,n,r,l===0,dS(e,r.way)))}
      </table>
    </div>`}var qc=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,aS=(e,t)=>qr(e,qc(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${lS(n[t])} ${n[t].parts.map(({part:o})=>uS(n[t],o))}`),lS=e=>Ur(`A piece of ${qc(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,dl(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),uS=(e,t)=>cl(`${t} of all of them, ${qc(e)}`,e,t),dS=(e,t)=>e[0].lines.map(({run:n},o)=>Wo(e)(`${n??""}, a piece`,({lines:i})=>Nc(t,jc)(i[o]))),C$=({times:e})=>fl(e,t=>`the order loses money, made ${t.map(n=>Hc(n.times)).join(", ")}.`);function L$({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${st}</strong> ${o}</p>`)}
  </div>`:u}function I$({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?u:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${jt(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${P(N(a.units,r.make_g))} in
            ${V(r.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function cS(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function hl({file:e,question:t,prices:n,is_old:o}){let i=ro(e),r=cS(n),l={quote:n.length>1&&r?{...t,way:r}:t},d=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?s`<p class="question">The price that is offered</p>
            ${ue("The price that is offered",r,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?dn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):u}
      ${dn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${dn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Ke("Shopping list, table",Xe(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?r?u:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${io()}</p>
  </section>`}var Uc=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await pS(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";ht(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:u}</p>`,this)}};async function pS(e){try{return[URL.createObjectURL(await Jt({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof y))throw t;return["",t.message]}}customElements.define("cost-picture",Uc);function W$(e,t){let{costs:n,currency:o}=e;if(!n.length)return u;let[i,r]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Be:tl()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${mS(e).map(({sell:d,each:c})=>s`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function mS({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var E$=({sell:e})=>`${e} to sell`;function N$({numbers:e,currency:t,has_tax:n},o){let i=Wo(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${e.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):u}
        </tbody>
        <tbody>
          ${Hr("A piece costs",e)} ${fS(e).map(r=>hS(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${pl(e,E$)}
        </tbody>
        ${zr(e).map((r,l)=>ml(e,n,r,l===0))}
      </table>
    </div>`}var fS=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],hS=(e,t)=>qr(e,t,n=>dl(n,t),n=>cl(`${t} of the whole run, ${E$(n)}`,n,t)),j$=({numbers:e})=>fl(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function H$(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${qt()?_S():gS()}
  </section>`}var gS=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>zc()}>To the prices paid</button>`;function zc(e,t="lane-studio"){le("set-up studio"),e&&Ee("studio",e),pt("set-up"),requestAnimationFrame(()=>U(C(t)))}function _S(){let{quote:e,complaint:t,is_old:n}=Xa();return s`${e?s`${$S(e)} ${j$(e)}`:u}
    <div class="row">${yS(t)}</div>
    ${Jc()?u:Kc(e?.currency,t)} ${t?wS(t):u}
    ${e?TS(e,n):t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function $S({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return u;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${st}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var bS=["sell","margin","markup","price"],Di=(e,t)=>e?.file===""&&e.field===t?j(e):void 0;function wS(e){return bS.some(t=>Di(e,t))?u:s`<p class="alarm" role="status">${Sn(e.field)}${j(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${Tc}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${wc}>Go to the field</button>`:u}
    ${$c(e)}`}function gl({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:d}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??u}>${t}</label>
    <input
      id=${e}
      .value=${M(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:u}
    />
    ${ge(e,r,i)}
  </div>`}function yS(e){let{numbers:t}=a.quote_wish;return gl({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Di(e,"sell"),take:n=>Yi({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&Yi({numbers:void 0})}})}var vS=()=>se()?zc("money asking",`${J("studio","/asking")}-name`):zc(),Jc=()=>Object.keys(g("studio","/asking")??{}).length>0,kS=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],xS={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Kc(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=xS[n??"price"],l=d=>r&&Ue(d)?`${d.trim()} ${r}`:d;return s`${ue("A price, for this moment",n,kS,d=>{Yi({by:d,figure:""}),U(C("quote-figure"))})}
    ${n?s`<div class="row">
            ${gl({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:Di(t,n),take:d=>Yi({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${vS}>Keep my ways of selling</button>`}function TS(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${N$(e,t)}
  ${RS(e,t)} ${W$(e,t)}
  ${hl({file:a.run.file,question:tl(),prices:e.numbers[0].prices,is_old:t})}`}function RS({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let d=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function q$(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${sn(t)} ${an(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${ne(String(n))}`:u}</p>
    ${h$()} ${$n(t.now)?ul("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${$n(t.now)?DS():SS()}
    </section>
    ${$n(t.now)?BS():u}`}var SS=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function DS(){let{quote:e,complaint:t,is_old:n}=f$();return s`${e?s`${L$(e)} ${C$(e)}`:u}
    <div class="row">${AS(t)}</div>
    ${Jc()?u:Kc(e?.currency,t)} ${t?OS(t):u}
    ${e?s`${MS(e)} ${I$(e)} ${F$(e,n)}
          ${hl({file:Ie().open.file,question:Ac(Ie()),prices:e.times[0].prices,is_old:n})}`:t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var AS=e=>gl({id:"order-times",label:"How often it is made",value:Ie().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Di(e,"times"),take:t=>v(Ie(),{times:t})}),PS=["times","margin","markup","price"];function OS(e){if(PS.some(n=>Di(e,n)))return u;let t=yt("order");return s`<p class="alarm" role="status">
      ${t?s`${Sn(e.field)}${j(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${Dc}>Ask again</button>`:t&&nn()?s`<button type="button" @click=${()=>ze(nn())}>Go to the field</button>`:u}`}function MS({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:u}function BS(){let{file:e,now:t}=Ie().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${rl()}
    <div class="choice">
      ${dn({words:"Bench sheets",kind:"sheet",file:`${ro(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${io()}</p>
  </section>`}var FS=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function U$(){let e=[...a.files?.orders??[]].sort(FS),t=a.new_order.trim(),n=()=>{de(async()=>{await Yh(t),f({new_order:""})})};return s`${kt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?Ht(e,CS):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${M(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${xt("order")}`}function CS(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":V(t,"piece"),n?`due ${ne(n)}`:"",o?`changed ${ne(o)}`:""].filter(Boolean);return ln({kind:bo,one:e,facts:i,open:()=>_r(e.file)})}function J$(){if(a.view==="order"&&a.order)return z$(a.order.open);let e=qn();if(e)return z$(e);let t=LS();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(G(n)||n.theirs||n.failed);return a.view==="formula"&&o?IS():n.theirs?Gc(n):n.failed?$l(`Not saved: ${n.failed}`):G(n)?Qc:_l(n.shipped?Vc:`Saved in ${n.file}`)}function z$(e){return e.theirs?Gc(e):e.failed?$l(`Not saved: ${e.failed}`):G(e)?Qc:_l(e.shipped?Vc:`Saved in ${e.file}`)}var Vc="Built-in: your first change is saved as a copy.",Qc={words:"Saving ...",is_kept:!1},_l=e=>({words:e,is_kept:!0}),$l=e=>({words:e,is_kept:!1,is_failed:!0}),Gc=e=>$l(ko(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function LS(){let e=a.formulas.apart?"apart":"run",t=_n(e);if(t)return Gc(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&G(o)))return a.complaint?.file===""?$l(`Not saved: ${a.complaint.problem}`):Qc}function IS(){let e=a.formulas[a.formula_of];return _l(e?e.shipped?Vc:`Saved in ${e.file}`:"")}function wl(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="moulds"&&t)return bl(t,Kh,Vh);let r=ft(e)?qn():void 0;return r?bl({past:K$(r,o),future:K$(r,i)},or,Ou):ft(e)?{undo:rr()&&Cd,redo:Iu()&&Kg}:e==="order"&&n?bl(n,Zh,Xh):bl({past:o,future:i},or,Ou)}function K$(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var bl=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var V$={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},WS={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},ES="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",NS="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Yc=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${e} />`}</svg>`;function Y$(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${dm.map(t=>Z$(t,V$[t],s`${V$[t]}`))}
              </nav>
              ${HS()}`}
    </div>
    ${e?u:qS()}
  </header>`}var jS={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},yl=["metric","both","us"],Q$={metric:"g",both:"both",us:"oz"},G$=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function HS(){let e=yl[(yl.indexOf(a.units)+1)%yl.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${yl.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${G$(t)}>
            ${jS[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${G$(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Q$[a.units]}<span
        class="unseen"
        >. Change to ${Q$[e]}</span
      >
    </button>`}function qS(){let{undo:e,redo:t}=wl();return s`<div class="bar">
    ${a.run.file?US():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Yc(ES)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Yc(NS)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?QS():u}
  </div>`}function US(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${cm.map(zS)}</div>
  </nav>`}function zS(e){let[t,n]=WS[e],o=JS(e);return Z$(e,o?`${t}, ${o.words}`:t,s`${Yc(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function JS(e){if(e==="watch"&&og())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&KS())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&VS())return{sign:"\u25CB",words:"missing"}}var KS=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>ea(e.id)>0),VS=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Z$(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{pt(e)}}
  >
    ${n}
  </button>`}function QS(){let{words:e,is_kept:t,is_failed:n}=J$();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var X$=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${ul("run")}`;function tb(e){if(!Eg(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=Ne(t)?`${V(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${eb(e,"pour","The base, whole run")}
      ${t.pipe?eb(e,"pipe","The topping, whole run"):u} ${GS(e)}
    </div>
  </section>`}function eb(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...o_(i),...Pa(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:d})=>vl(`${t}.ingredients.${d}.g`,l.name,Lo(a.units,l)))}
    ${vl(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",N(a.units,i.make_g))}
  </div>`}var vl=(e,t,n)=>F({key:`needs.${e}`,label:t,shown:n,of:e});function GS(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((d,c)=>({layer:r,one:d,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>X(a.units,he(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:d,j:c})=>vl(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${r.name}`,Lo(a.units,l)))}
    ${o.map((r,l)=>vl(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function nb(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,d=r?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${F({key:"piece.fresh",label:c("Fresh"),shown:N(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:F({key:"piece.cured",label:c("Cured"),shown:N(a.units,o),of:"piece.cured_g"})}
      ${r?F({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:N(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:F({key:"piece.label",label:"Net weight for the label",shown:N(a.units,i,0),of:"piece.label_g"})}
      ${l?F({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?s`${F({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Zc(e)}
    </section>
    ${H$()} ${tb(bi(e))}`}function Zc(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var YS={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Jr({kind:e,unit:t}){let n=YS[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var ob="degrees",ZS=()=>localStorage.getItem(ob)??void 0,ib=e=>localStorage.setItem(ob,e);function Xc(e){return e.kind!=="temperature"?Jr(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":ZS()}function rb(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=$t(o);return Jr(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function sb({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Ue(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function kl({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Ue(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var Ut,XS=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function ab(e,t){let n=zn(e.begun.id,t.key),o=XS(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${e1(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:u}
      ${s1(e,t,n)}
    </p>
    ${d1(e,t,o,n)}
  </div>`}function e1(e,t,n,o){if(t.kind==="choice")return r1(e,t,n,o);let i=lb(e,t,o),r=Jr(t).length>0||t.kind==="count",l=c=>ep(e,t,{...i,number:c.target.value}),d=c=>{Mo(c),t1(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":u}
      class=${r?"number":""}
      autocomplete="off"
      .value=${M(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||kl(t,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&n1(c)}
    />
    ${o1(e,t,i)} ${i1(e,t,i)}`}function lb({begun:e},t,n){if(Ut?.batch===e.id&&Ut.key===t.key)return Ut.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:Xc(t)};let o=rb(t,n?n.value:t.noted??"");return{...o,unit:o.unit??Xc(t)}}function ep(e,t,n,o=!1){Ut={batch:e.begun.id,key:t.key,typed:n},ub(e,t,n,o),Q()}function ub(e,t,n,o){let i=kl(t,n)!==void 0;Zu(e,{key:t.key,text:n.number,value:sb(n),is_left:o,lacks:i})}function t1(e,t){if(Ut?.batch!==e.begun.id||Ut.key!==t.key)return;let{typed:n}=Ut;Ut=void 0,ub(e,t,n,!0),Q()}function n1({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function o1(e,t,n){let o=Jr(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:u;let i=r=>{ib(r),ep(e,t,{...n,unit:r},!0)};return db(`Degrees: ${t.words}`,o,n.unit,i)}function i1(e,t,n){if(t.kind!=="length")return u;let o=i=>ep(e,t,{...n,side:i},!0);return db(`Side: ${t.words}`,["above","below"],n.side,o)}var db=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function r1(e,t,n,o){let i=o?o.value:t.noted,r=l=>{Kn(e,t.key,l),B(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:u}
  </div>`}function s1({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=Ut?.batch===e.id&&Ut.key===t.key;return t.noted!==void 0&&!(o&&!Ut.typed.number.trim())?s`<span class="stands kept">✓ noted ${u1(t.noted_at)}</span>`:u}var a1=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),l1=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function u1(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?a1:l1).format(t)}function d1(e,t,n,o){if(o?.refused)return tp(o,`${n}-said`);let i=kl(t,lb(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:u}function tp(e,t){let{words:n,is_asked:o,noted:i}=e.refused,r=e.value||"nothing",l=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class="complaint" id=${t}>${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.</p>
    ${o||l?s`<div class="row">
            ${l?s`<button type="button" @click=${()=>bh(e)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>$h(e)}>
              ${l?`Note ${r} in its place`:`It is so: note ${r}`}
            </button>
          </div>`:u}
  </div>`}var Kr=e=>{let{beginning:t}=a.record;t&&Le({beginning:{...t,...e}})},cb=e=>Le({beginning:{batch:e,code:"",answers:{}},told:void 0}),np=()=>Le({beginning:void 0}),pb=e=>Kr({code:e,complaint:void 0});async function op(e){let{beginning:t}=a.record;if(!(!t||t.is_asking)){Kr({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Cn(a.run),await Pt(),await c1(t,e)}catch(n){if(!(n instanceof y))throw n;Kr({complaint:n.complaint}),B(`Not begun: ${n.complaint.problem}`)}finally{Kr({is_asking:!1})}}}async function c1({batch:e,code:t,answers:n},o){let i=a.run.file,r=Ao(e)!==void 0,l=await ph({run:i,batch:e,seen:o,code:t.trim()||void 0,again:r,...n}),[d]=l.record.batches;Le({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),Gs(l,i),B(`The record is begun: ${d.begun.code}`),ta(d,Ro(e)),await bn()}async function mb(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};Kr({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await op(t)}var ip=(e,t)=>Le({code:{batch:e,text:t}}),xl=()=>Le({code:void 0});async function fb(){let{code:e,run:t}=a.record;if(!e?.text.trim())return xl();try{let n=crypto.randomUUID();Gs(await Js({run:t,batch:e.batch,act:n,code:e.text.trim()}),t),xl()}catch(n){if(!(n instanceof y))throw n;Le({code:{...e,complaint:j(n.complaint)}})}}var Vr="batch-code";function Tl({begun:e}){let{code:t}=a.record,n=t?.batch===e.id,o=()=>{ip(e.id,e.code),U(C(Vr))};return s`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${e.code}</b></p>
    ${n?s`<div class="row">
            <div class="field ${t.complaint?"wants":""}">
              <label for=${Vr}>Another code</label>
              <input
                id=${Vr}
                autocomplete="off"
                .value=${M(t.text)}
                aria-describedby=${t.complaint?`${Vr}-said`:u}
                @input=${i=>ip(e.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{fb()}}>Use this code</button>
            <button type="button" @click=${xl}>Leave it</button>
            ${t.complaint?s`<p class="complaint" id="${Vr}-said">${t.complaint}</p>`:u}
          </div>`:s`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var Qr;function p1(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var sp=e=>`cured.${e}`;function hb(e,t){let{id:n}=e.begun,o=Qr?.batch===n?Qr:{batch:n,day:p1(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:u}
    </p>
    ${f1(n).map(h1)}
    ${i.length?s`<ul class="weighings">
            ${i.map(d=>_1(e,d))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${rp("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${rp("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${rp(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>m1(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${ne(r.on)} already: ${Zs(r)}.</p>`:u}
  </div>`}var rp=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${M(o)}
      @input=${r=>{Qr=i(r.target.value),Q()}}
    />
  </div>`;function m1(e,{unit:t="g"},n){let o=Ue(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;Kn(e,sp(n.day),r),B(`Weighing of ${ne(n.day)}: ${r}`),Qr=void 0,Q(),U(C("cure-pieces"))}var f1=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),h1=e=>{let t=ne(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${tp(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>g1(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function g1({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Qr={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),U(C("cure-pieces"))}function _1(e,t){let n=zn(e.begun.id,sp(t.on));return s`<li>
    <span><b>${ne(t.on)}</b>: ${Zs(t)} <span class="stands kept">✓ noted</span></span>
    ${n?u:s`<button
            type="button"
            aria-label="Take back the weighing of ${ne(t.on)}"
            @click=${()=>Kn(e,sp(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function gb(){let{batches:e}=a.record;if(e.length<2)return u;let t=Ys();return s`<ul class="makings" aria-label="Batches of this run">
    ${[...e].reverse().map(n=>$1(n,n.begun.id===t?.begun.id))}
  </ul>`}function $1(e,t){let{id:n,code:o}=e.begun,i=ea(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>dr(n)}>
      <b>${o}</b> <span>${ap(e)}</span>
      <small>${Gr(e)}; ${V(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function ap({number:e,begun:t}){let{of:n=1}=a.record;return`${n>1||e>1?`batch ${e} of ${Math.max(n,e)}, `:""}${V(t.pieces,"piece")}, begun ${ne(t.begun_on)}`}var Gr=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${bt(t)}`;function _b(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?Wn(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Ro(n):"";return!r||Xs(e,t.key)||zn(o.id,t.key)?u:s`<p class="read-at-weights">
    <button type="button" @click=${()=>Kn(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function $b(e){Qs();let t=Ys();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${b1()} ${gb()} ${t?y1(t):w1(e)}
  </section>`}function b1(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:u}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function w1(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function y1(e){let{blanks:t}=e;return s`<div class="record-head">
      ${Tl(e)}
      <p>${ap(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${Gr(e)}</b>
      </p>
    </div>
    ${t?T1(e,t):s`<p class="hint">Reading ...</p>`}`}var v1={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},k1="unmoulded_on",lp="Cure and test";function x1(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===k1||o?.title===lp?lp:v1[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function T1(e,t){let n=x1(t);return s`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>s`<button type="button" @click=${()=>R1(i)}>${bb(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>S1(e,o,i))}`}var bb=({title:e,of:t})=>t?`${e}: ${t}`:e,up=e=>`record-part-${e}`;function R1(e){let t=document.getElementById(up(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var S1=(e,t,n)=>s`<section class="record-part" aria-labelledby=${up(n)}>
    <h2 id=${up(n)} tabindex="-1">${bb(t)}</h2>
    ${t.title===lp?D1(e):u} ${t.blanks.map(o=>A1(e,o))}
  </section>`,D1=({for_sale:e})=>e?u:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,A1=(e,t)=>t.kind==="weighing"?hb(e,t):s`${ab(e,t)} ${Xu(t)?_b(e,t):u}`;var[yb,cp]=[440,270],[Yr,dp,Rl,Ai]=[64,yb-10,10,cp-52],P1=6,O1=8;function wb(e){let t=e/P1,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var Pi=e=>R(e,1);function vb(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=d=>Pi(Yr+(dp-Yr)*d/n),r=d=>Pi(Ai-(Ai-Rl)*d/o),l=e.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${yb} ${cp}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${wb(n).map(d=>S`<path class="grid" d="M${i(d)} ${Rl}V${Ai}" />
            <text x=${i(d)} y=${Ai+20} text-anchor="middle">${Pi(d)}</text>`)}
      ${wb(o).map(d=>S`<path class="grid" d="M${Yr} ${r(d)}H${dp}" />
            <text x=${Yr-8} y=${r(d)} text-anchor="end" dominant-baseline="middle">${Pi(d)}</text>`)}
      ${S`<text x=${(Yr+dp)/2} y=${cp-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Rl+Ai)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Rl}V${Ai}" />`}
    </svg>
    ${M1(e)}`}function M1(e){let t=Math.max(1,Math.round(e.length/O1)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${Pi(o)}</th>
              <td>${Pi(i)}</td>
              <td>${R(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Sl=Math.PI/8,B1=500,pp=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},B1))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await Jt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(si(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(t){t(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;ht(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Sl)}>Turn left</button>
        <button type="button" @click=${t(Sl)}>Turn right</button>
        <button type="button" @click=${n(Sl)}>From above</button>
        <button type="button" @click=${n(-Sl)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",pp);function kb(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${F({key:"mould.brimful",label:"To the brim",note:`${P(Se(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Ae(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${vb(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${F1(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function F1(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var C1=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function xb(e){let{batch:t}=a.printing;return Ne(e)&&t<=e.pieces.batches?t:0}function L1(e){if(!Ne(e))return u;let t=xb(e),n=i=>Io({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${M(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${C1(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Nt(e,r)}`))}
      </select>
    </div>
  </div>`}function Tb(e){let{paper:t}=a.printing,n=ro(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=xb(e),d={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${rl()} ${L1(e)}
    <div class="choice">
      ${dn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Ke("Label draft",Xe(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Ke("Drawing of the pour, true size",Xe(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Ke("Drawing of the piece",Xe(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Ke("Whole piece, GLB (3D viewer)",Xe(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Ke("Whole piece, STL (3D printing)",Xe(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Ke("Filled cavity, GLB (3D viewer)",Xe(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Ke("Cavity, STL (3D printing)",Xe(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${io()||`The drawing has the pour line ${P(Se(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Rb=e=>Tb(e);var De={at:"/decorations"},Oi=e=>`${De.at}/${e}`,so=e=>D("run",`${Oi(e)}/name`).trim()||`Decoration ${e+1}`,et=()=>$(a.run.now,"/cut")!==void 0,Eo=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),Zr=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var mt="/batch",Sb=e=>`${e}/moulds_owned`;function mp(){return O({name:"batches",pointers:[mt],summary:`Batches${I1()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${L("run",mt)}
        <div class="row">${W1()} ${N1()}</div>
        ${T({question:"Cavities at each filling",at:mt,asked_at:`${mt}/fill`,chosen:g("run",`${mt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>Db("fill",e==="full"?e:void 0)})}`})}function I1(){let[e,t]=[`${mt}/pieces`,`${mt}/casts`].map(o=>D("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Db(e,t){let n=fe("run",mt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function W1(){let e=g("run",`${mt}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${mt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return et()?g("run",`${mt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${E1}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function E1(){E("run","Counted in loaves",mt,Db("pieces",void 0))}function N1(){let e=`${mt}/whippings`;return!ut()&&g("run",e)===void 0?u:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var j1={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Tt={at:"/dust"},Dl=e=>D("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Ab(){le("set-up dust"),q(Tt,{name:""},"Dust")}function H1(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function Pb(e){let t=`/dust/${e}`,n=H1(t),o=Dl(e),i=r=>({...fe("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...j1[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${T({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${eo("run",t,o)}`}var q1={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function U1(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function Ob(e,t){let n=U1(e),o=i=>({...fe("run",e,["on_top","buried"]),...q1[i]});return Eo(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:Eo(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:O({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${T({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?z1(`${e}/on_top`):n==="buried"?K1(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function z1(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Mb(e,"It is turned")}`}function Mb(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return O({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var J1=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function K1(e,t){let n=`${e}/buried`,o=t===x(De).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${L("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:J1,puts:l=>Q1(e,l)})}
  ${i==="said"?Y1(e,t):u}`}var V1=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${S`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,Bb={x:"",y:"",height:""};function Q1(e,t){let n=fe("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${Zr(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Bb);return{...fe("run",e,["per_piece","per_cast"]),[Fb(e)]:i.length,buried:{...n,places:i}}}var Fb=e=>et()?"per_cast":Zr(e)??"per_piece";function G1(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>A(r,`${e}/${l}`,void 0),n);return A(i,`${e}/${Fb(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function Y1(e,t){let n=G1(e),o=x(n);return s`${V1()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,d=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${W(n,r)} role="group" aria-label="Place ${r+1} of ${so(t)}">
        ${L("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${z(n,r,`place ${r+1} of ${so(t)}`)}
        </div>
        ${Mb(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${Z(n,"Add a place",()=>q(n,Bb,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Lb=e=>`${e} made`;function Z1(){let e=Oi(x(De).length),t=et()?{}:{per_piece:""};le("set-up decorate");for(let n of[Lb(e),`${e} where`])Ee("run",n);q(De,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Ib(){let[e,t]=[x(De).length>0,x(Tt).length>0];return s`${Z(De,e?"Add another decoration":"Add a decoration",Z1)}
  ${Z(Tt,t?"Add another dust":"Add a dust",Ab)}`}function Wb(e){let t=Oi(e);return s` ${L("run",t)} ${oD(t)}
    <div class="row">
      ${eD(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${Eo(t)==="bought"?u:X1(t)}
    </div>
    ${Ob(t,e)} ${eo("run",t,so(e))}`}var X1=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function eD(e){let t=Zr(e),n=te("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(et()&&t==="per_piece"))return s``;let o=t==="per_cast"?et()?"In each loaf":"In each cast":et()?"On each bar":"On each piece",i=r=>({...fe("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${et()?T({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var tD={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},Cb={density:"",melt_loss:"",left_in_jug:""};function nD(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(Cb),"time_per_tray_fill"]:[]],o=Eo(e)==="bought"&&t!=="bought"?Cb:{};return{...fe("run",e,n),...o,...tD[t]}}function oD(e){let t=Eo(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return O({name:Lb(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>nD(e,o)})}
        ${t?iD[t](e):u}
        ${t==="bought"?u:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var iD={mould:rD,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function rD(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${gi("Cast in",`${e}/mould`,a.files?.moulds)}
  ${T({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Eb(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!ut()?u:s`<div class="labelled">
      ${bd(e,"Make one pot of lye solution for both",t,{})}${kn("lye_solution")}
    </div>
    ${Lt("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Nb(e){let t={at:"/bottles"},n=x(t);return O({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&_e(e)?` Weights are of ${_e(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${W(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${z(t,i,l)}
            </div>
            ${L("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?sD(e,i,l):u}
          </div>`})}
        ${Z(t,"Use up a bottle",()=>q(t,{name:"",holds:""},"bottle"))}`})}function sD(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>F({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:X(a.units,he(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var Xr="/label",hp=()=>g("run",Xr)!==void 0;function jb(){let t=g("studio",Mi.studio)!==void 0?{weight_spread:""}:{market:""};le("set-up label"),E("run","Label added",Xr,t,C("lane-label"))}function Hb(){return s`${L("run",Xr)} ${aD()}
    <button type="button" @click=${()=>E("run","Label removed",Xr,void 0)}>Remove the label</button>`}var Mi={run:"/label/market",studio:"/label/market"};function gp(){let{of:e,at:t}=vr(Mi);return s`${T({of:e,question:"Where it is sold",at:e==="run"?Xr:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?lD(n):n})}
  ${Xn("Where it is sold",[Mi])}`}function aD(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${gp()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:uD})}
  ${e==="weighed"?dD():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${on(Mi)==="EU"||g("run",fp)!==void 0?bd(fp,"With the e mark",g("run",fp)===!0,!0):u}`}var fp="/label/e_mark";function lD(e){return{...fe("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function uD(e){let t=fe("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function dD(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${x(e).map((t,n)=>s`<div class="row" id=${W(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${z(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Z(e,"One more piece",()=>q(e,"","piece"))}`}function qb(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${Od(e)?`${c.count} of `:""}${Nt(e,c)}`),l=`Made in ${t} batches${Od(e)?": ":" of "}${jt(r)}; ${xa(n,o)}.`,d=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ne(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${V(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?s`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var Ub=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function zb(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?Qb(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,d=e.pipe?cD(e,t,n,l):0;return{brim:n,line:o,topping:d,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+d+l)}}function cD(e,t,n,o){let i=Ct($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,d]=Nu(t,t.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*e.pipe.visible_each_ml/c}function _p(e,t){let[n,o]=Nu(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),d=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let w=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${d(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var es=(e,t)=>e===t?`shaded ${t}`:"plain";function ao(e,t,n=u){return s`${Jb(e,t,n)}
  ${e==="decorate"&&$p(t)?s`<p class="hint">${$p(t)}</p>`:u}`}var lo=(e,t)=>s`<div class="small-view">${Jb(e,t,u)}</div>`;function Jb(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=zb(t,o),r=o.right-o.left,l=Math.max(6,r*.1),d={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${yD(e,t)}>
      ${pD(e)} ${mD(e,t,o,i)} ${hD(e,t,o,i)} ${gD()}
      ${_D(e,t,o,i)} ${wD(e,t,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Kb(e,t){let n=a.measured.outline,o=zb(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function pD(e){return S`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Ub(Vb())} /></clipPath>
  </defs>`}function Vb(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function mD(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(d=>fD(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${e})">${l.map((d,c)=>S`<path class="whole" d=${d} /><path class="${es(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${e})" d=${d} />`:u}`).reverse()}</g>`}function fD(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function hD(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${e})"><rect class=${es(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function gD(){return S`<path class="wall" fill-rule="evenodd" d=${Ub(Vb())} />`}function _D(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${t.pipe?S`<path class=${es(e,"pipe")} d=${_p(n,o)} />${e==="pipe"?S`<path fill="url(#dots-pipe)" d=${_p(n,o)} />`:u}`:u}
    ${e==="dust"?$D(t,n,o):u}
    ${o.ball?S`<circle class=${es(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>bD(es(e,"decorate"),i,d,c,p))}`}function $D(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return S`<path class="powder" d=${e.pipe?_p(t,n):o} />`}function bD(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],d=Ct($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Ct($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${e} cx=${r} cy=${-l} r=${Qb(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),w=c*_+2*b,k=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${e} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${r} ${-l}) rotate(${k})" />`}var Qb=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function $p(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function wD(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return S`${Array.from({length:i-1},(r,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function yD(e,t){let n=P(Se(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${$p(t)}`.trim()}var vD=e=>`set-up ${e}`;function tt({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=vD(e),d=()=>wt({part:t,fold:l},r);if(xn())return s`${d()}`;i.some(([m,_])=>We(m,_))&&le(l);let c=a.open.has(l),p=hi().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>He("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${d()}</div>`:u}
  </section>`}var be=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var Gb=()=>x(De).length>0,Yb=()=>x(Tt).length>0;function Zb(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Xb(e){let t=e?x(De).flatMap((n,o)=>nw(e,o)??[]):[];return tt({name:"decorate",title:"Decorate",drawing:e&&(()=>lo("decorate",e)),result:t.length?t.map(n=>TD(e,n)):be(ew(De,so)),about:[["run",De.at]],form:()=>s`${e?s`<div class="side">${ao("decorate",e)}</div>`:u}
        <div class="weights">${e?x(De).map((n,o)=>kD(e,o)):u}</div>
        ${ow(De,so,Wb)}`})}var ew=(e,t)=>`${x(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function kD(e,t){let n=nw(e,t);return n?RD(e,n,t):u}function tw(e){let t=e?.dust?.length?x(Tt).map((n,o)=>DD(e,o)):void 0;return tt({name:"dust",title:"Dust",drawing:e&&(()=>lo("dust",e)),result:t??be(ew(Tt,Dl)),about:[["run",Tt.at]],form:()=>s`<div class="side">${e?ao("dust",e):u}</div>
        <div class="weights">${e?x(Tt).map((n,o)=>AD(e,o)):u}</div>
        ${ow(Tt,Dl,Pb)}`})}var nw=(e,t)=>Zb(e.decorations,x(De),D("run",`/decorations/${t}/name`),t);function ow(e,t,n){return s`<div class="all-questions">
    ${x(e).map((o,i)=>s`<section class="questions" id=${W(e,i)} aria-labelledby="${W(e,i)}-title">
          <div class="part-head">
            <h3 id="${W(e,i)}-title">${t(i)}</h3>
            ${z(e,i,t(i))}
          </div>
          ${wt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function xD(e,t){return s`<h3>${e.name}</h3>
    ${F({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function TD(e,t){if(t.bought)return be(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=P(X(a.units,he(t,"make_")));return be(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ne(e.whole)?", for the whole run":""}.`)}function RD(e,t,n){return t.bought?xD(t,n):s`<h3>${t.name} ${Ne(e.whole)?s`<small>for the whole run</small>`:u}</h3>
    ${F({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:X(a.units,he(t,"make_")),of:`decorations.${n}.make_g`})}
    ${F({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(t.volume_each_ml,2)} ml`,shown:N(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${Yn(t.casting_s)} of casting.</p>`:u} ${SD(t,n)}`}function SD(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":P(Se(a.units,l)),r=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?P(Se(a.units,Math.min(...d))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Po(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function DD(e,t){let n=iw(e,t);if(!n)return u;let o=_e(e);return be(s`<b>${P(X(a.units,he(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var iw=(e,t)=>Zb(e.dust,x(Tt),D("run",`/dust/${t}/name`),t);function AD(e,t){let n=iw(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=F({key:`set-up.dust.${t}`,label:n.name,note:_e(e),shown:X(a.units,he(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function rw(e){let t=e?.cut;return tt({name:"cut",title:"Cut",drawing:e&&(()=>lo("cut",e)),result:t?PD(e,t):be("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?OD(e,t):u}
        <div class="all-questions">${S_()}</div>`})}var PD=(e,t)=>be(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${P(N(a.units,e.piece.fresh_g))} on average, fresh.`);function OD(e,t){return s`<div class="side">${ao("cut",e)}</div>
    <div class="weights">
      ${F({key:"cut.bar",label:"A bar on average, fresh",note:MD(t),shown:N(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${F({key:"cut.offcuts",label:"Offcuts",shown:N(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${BD(t)}
    </div>`}function MD(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function BD(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function sw(e){return tt({name:"label",title:"Label",drawing:CD,result:be(FD(e)),about:[["run","/label"]],form:()=>s`<div class="more">${Hb()} ${e?Zc(e):u}</div>`})}function FD(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${P(N(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var CD=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Rt=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],oe=e=>a.fats.find(t=>t.id===e)?.name??e,bp=8;function No({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,d=a.finding?.key===e?a.finding.text:"",c=(d.trim()?LD(d,o):n).filter(w=>!i(w)),p=w=>{f({finding:void 0}),r(w)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(w=>qe(oe(w))===qe(m)),b=()=>{if(!m)return;let w=c.find(K=>qe(oe(K))===qe(m)||qe(K)===qe(m)),k=c.length===1?c[0]:void 0;(w??k??_)&&p(w??k??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${w=>f({finding:{key:e,text:w.target.value}})}
        @keydown=${w=>{w.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,bp).map(w=>s`<button type="button" @click=${()=>p(w)}>${oe(w)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>bp?s`<p class="hint">${c.length-bp} more: type a part of the name.</p>`:u}
  </div>`}function LD(e,t){let n=t?[]:Rt(),o=qe(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>vn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(d=>qe(oe(l)).includes(d));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var Dn=e=>h({...e,of:"studio"});function aw(){let e=(t,n,o)=>O({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${pe("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",ND)} ${e("/blends","Melted blends of fats",qD)}
    </div>
  </section>`}var ID=["/prices","/packs","/have","/waste"],WD=e=>(t,n)=>ID.reduce((o,i)=>$(o,`${i}/${I(e)}`)===void 0?o:Tr(o,i,e,n),t);function ED(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let d=$(r,l);return d===void 0?r:A(r,l,n(d))},i)}function lw({at:e,name:t,label:n,body:o}){let i=(l,d)=>Bt([["studio",l],["run",ED(t,d)]]),r=`${e}/${I(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Bo("studio",e,t)}
    </div>
    ${L("studio",r)}
    <div class="row">${xr({of:"studio",at:e,name:t,label:n,also:WD(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Dn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Dn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Dn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var Bi="/lye_solutions",ND=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${pe("studio",Bi).map(e=>lw({at:Bi,name:e,label:"What you call it",body:jD(e)}))}
    ${$i({of:"studio",at:Bi,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>ee("studio",`${Bi}/${I(e)}/alkali`)})}`;function jD(e){let t=`${Bi}/${I(e)}`,n=D("studio",`${t}/alkali`),o=n||"alkali",i=D("studio",`${t}/strength`);return s`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Dn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Dn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${HD(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Dn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Dn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${L("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Je({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Dn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function HD(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var ts="/blends",qD=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${pe("studio",ts).map(e=>lw({at:ts,name:e,label:"What you call it",body:UD(e)}))}
    ${$i({of:"studio",at:ts,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>C(`find-blend ${e}`)})}`;function UD(e){let t={of:"studio",at:`${ts}/${I(e)}/fats`,stays:!0},n=x(t),o=i=>n.some(r=>r.fat===i);return s`${L("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${W(t,r)}>
        ${Dn({label:oe(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${z(t,r,oe(String(i.fat)))} ${L("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${yi("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${No({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:zD(),among:"fats",taken:o,take:i=>q(t,{fat:i,share:""},oe(i))})}`}var zD=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],uw=e=>x({of:"studio",at:`${ts}/${I(e)}/fats`}).map(({fat:t})=>String(t)),Fi=e=>{let t=g("studio",`${Bi}/${I(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var ns=e=>`/${e}/lye_from`,os=e=>`/${e}/blend`;function is(e){let t=pe("studio","/lye_solutions").length>0||g("run",ns(e))!==void 0,n=pe("studio","/blends").length>0||g("run",os(e))!==void 0;if(!t&&!n)return u;let o=[...dw(e),cw(e)].filter(Boolean).join(", ");return O({name:`/${e} ready`,pointers:[ns(e),os(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?KD(e):u} ${n?QD(e):u}`})}function dw(e){let t=g("run",ns(e));return typeof t=="string"?[t]:te("run",ns(e)).map(String)}var JD=e=>te(e,"/alkali").map(t=>String($(t,"/alkali")));function KD(e){let t=ns(e),n=J("run",t),o=dw(e),i=JD(e),r=[...new Set([...pe("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(Fi(m).alkali)),d=r.filter(m=>!l.includes(m)),c=ve("run",t),p=m=>{let{alkali:_}=Fi(m),b=o.includes(m),w=o.filter(Oe=>Oe!==m&&(b||Fi(Oe).alkali!==_)),k=b?w:[...w,m],K=k.length>1?k:k[0];E("run",`${m}: ${b?"no":"yes"}`,t,K)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?jt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${Fi(m).words}
          </button>`)}
    </div>
    ${ge(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?s`<p class="hint">Of another alkali than this formula's: ${d.map(m=>Fi(m).words).join(", ")}.</p>`:u}
  </div>`}var cw=e=>{let t=g("run",os(e));return typeof t=="string"?t:D("run",`${os(e)}/name`)};function VD(e,t){let n=te(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:d})=>d===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return uw(t).every(r=>i.has(r.toLowerCase()))}var wp="\0singly";function QD(e){let t=os(e),n=cw(e),o=[...new Set([...pe("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||VD(e,d)),r=o.filter(d=>!i.includes(d)),l=g("run",`${t}/share`)!==void 0;return s`${T({question:"Blend of fats that is weighed",at:t,chosen:n||wp,answers:[[wp,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===wp?void 0:d,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>E("run","Its share",t,{name:n,share:""},ee("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var co="/pour/layers",uo={at:co,in_order:!0},yp=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Pl=()=>x(uo);function GD(){let e=t=>Pl().some(n=>t in n);return yp.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function mw(e){let t=Pl(),n=GD();return t.length?s`<h3>
      Layers, lowest first ${e&&_e(e)?s`<small>${_e(e)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:co,is_told_elsewhere:!0,chosen:n,answers:yp,puts:o=>ZD(o,e)})}
    <div class="items">${t.map((o,i)=>XD(o,i,n,e))}</div>
    ${Z(uo,"One more layer on top",()=>q(uo,{name:YD(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${Z(uo,"Pour it in layers",()=>q(uo,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function YD(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function fw(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function ZD(e,t){let n=Pl(),o=a.is_old?void 0:t,i=(r,l)=>{let d=fw(o,r,l);return e==="parts"||!d||e==="depth"&&"tilted"in r?"":e==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((r,l)=>{let d=Al(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[e]:i(r,l)}}})}var Al=e=>fe("run",`${co}/${e}`,[...yp.map(([t])=>t),"rest"]);function XD(e,t,n,o){let i=`${co}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=fw(o,e,t);return s`<div class="part" id=${W(uo,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?eA(o,l,t):s`<p class="part-title">${r}</p>`} ${L("run",i)}
    ${nA(e,t,n,r)}
    ${o&&l?l.colours.map((d,c)=>tA(o,d,t,c)):u}
    ${O({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${sA(i,r)} ${aA(i,t)}
        ${z(uo,t,r)}`})}
  </div>`}function eA(e,t,n){return F({key:`pour.layer.${n}`,label:t.name,note:`${pd(Se(a.units,t.to_mm-t.from_mm))} thick, ${pd(N(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?N(a.units,t.g):X(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function tA(e,t,n,o){return F({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${R(t.teaspoons,1)} tsp`:"",shown:Lo(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function nA(e,t,n,o){if(n==="parts")return oA(e,t,o);let i="rest"in e;return s`${i?u:h({label:`${o}, ${n}`,at:`${co}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?rA(t,n):iA(t,n)}
    >
      Takes the rest
    </button>`}function oA(e,t,n){let o=`${co}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Y("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function iA(e,t){let n=Pl().map((o,i)=>i===e?{...Al(i),rest:!0}:o.rest?{...Al(i),[t]:""}:o);E("run","takes the rest",co,n)}function rA(e,t){let n=`${co}/${e}`;E("run","amount of the layer",n,{...Al(e),[t]:""},ee("run",`${n}/${t}`))}function sA(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${x(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${W(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${z(n,i,l)}
      </div>
      ${L("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${eo("run",r,l)}
    </div>`})}
  ${Z(n,"Add a colour",()=>q(n,{name:"",rate:""},"colour"))}`}var pw=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function aA(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===x(uo).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:Je({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:pw,puts:r=>r})}
        ${O({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!pw.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var zt=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function vp(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=zt()==="depth"?n-o:o;f({typed:void 0}),Y("run",`/pour/line/${zt()}`,`${R(i,2)} mm`)}function hw(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Ct($(a.run.now,`/pour/line/${zt()}`));return n===void 0?e.pour.below_brim_mm:zt()==="depth"?t-n:n}function lA(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function uA(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=hw(e),{share:o,h:i}=Kb(e,t-n),r=c=>lA(c,p=>vp(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),vp(e,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${P(Se(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function dA(e){let{pour:t}=e,n=P(Se(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=_e(e);return be(s`${o}, <b>${P(N(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${P(N(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var gw=()=>zt()==="depth"?"Depth":"Below brim";function _w(e){return tt({name:"pour",title:"Pour",drawing:e&&(()=>lo("pour",e)),result:e?dA(e):be(`${cA()}.`),about:[["run","/pour"]],form:()=>s`${e?pA(e):mA()}
        <div class="more">
          ${Ol("pour")} ${is("pour")} ${mw(e)} ${Ia("pour")}
        </div>`})}function cA(){let e=D("run",`/pour/line/${zt()}`);return e?`${e} ${zt()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function pA(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>vp(e,hw(e)+i);return s`<div class="side">
      ${ao("pour",e,uA(e))} ${$w(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:gw(),at:`/pour/line/${zt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${F({key:"pour.each",label:"Weigh into each",shown:N(a.units,t.mass_each_g),note:`${R(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${F({key:"pour.mm",label:"1 mm more or less",shown:Ae(a.units,t.ml_per_mm,2),note:`${tn(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${F({key:"set-up.pour.make",label:"Base to make",note:_e(e),shown:N(a.units,t.make_g),of:`${n}.make_g`})}
      ${F({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var mA=()=>s`<div class="side">
    ${$w()} ${L("run","/pour/line")}
    ${h({label:gw(),at:`/pour/line/${zt()}`,unit:"mm"})}
  </div>`,Ol=e=>s`<button type="button" @click=${()=>Ye(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function $w(e){let t=n=>{if(n===zt())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;E("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return ue("The pour line is measured",zt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var fA=[0,50,80,100];function bw(e){let t=e?.pipe;return tt({name:"pipe",title:"Pipe",drawing:t&&(()=>lo("pipe",e)),result:t?hA(e,t):be("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?gA(e,t):_A()})}function hA(e,t){let n=_e(e);return be(s`Pipe <b>${R(t.volume_each_ml,0)} ml</b> on each, ${P(N(a.units,t.mass_each_g))} at this
      whipped density; make <b>${P(N(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function gA(e,t){return s`<div class="side">
      ${ao("pipe",e)}
      ${F({key:"pipe.each",label:"Topping on each",shown:Ae(a.units,t.volume_each_ml),note:`${R(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${F({key:"set-up.pipe.make",label:"Topping to make",note:_e(e),shown:N(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${F({key:"pipe.density",label:"Whipped density",note:`overrun ${R(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Ol("pipe")} ${is("pipe")}
    </div>
    <div class="weights">${ec(t)} ${kw()} ${$A(e)} ${xA(e)}</div>
    <div class="more">${Xd(t)} ${Zd()}</div>`}var rs=e=>e===0?"pipe":`pipe.whipping${e}`,ss=(e,t)=>`${e.place}.pipe.whippings.${t}`;function ww(e,t){let n=ka(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function _A(){return s`<div class="more">${Xd()}</div>
    <div class="side">${kw()} ${g("run","/pipe/whip_now")===void 0?u:vw()}</div>
    <div class="weights">${ec()} ${Ol("pipe")} ${is("pipe")}</div>
    <div class="more">${Zd()}</div>`}var yw=e=>_e(e)?s`<small>${_e(e)}</small>`:u;function $A(e){return s`<h3>Today's bowl ${yw(e)}</h3>
    ${vw()} ${e.whippings.map((t,n)=>bA(e,t,n))}`}function bA(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${ww(e,t)}
  ${o==null?u:F({key:`${rs(n)}.now`,label:"Enough for",note:r,shown:[V(o,"piece"),""],size:"weigh",of:`${ss(e,n)}.pieces_now`})}
  ${yA(e,t,n)}`}function vw(){let e=g("run","/pipe/whip/holds"),t=e===void 0?Or():{holds:e,net:""};return Je({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:wA})}function wA(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${Mr("/pipe/whip_now")}
  </div>`}function yA(e,t,n){return t.readings?.length?O({name:`${rs(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>vA(e,t,n)}):u}function vA(e,t,n){return s`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${t.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Po(`${rs(n)}.readings`,"Show the calculation",`${ss(e,n)}.readings`)}`}function kw(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",e))?.[1]?.replace(",",".")),n=We("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Zn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${fA.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Y("run",e,`${o} %`)}
          >
            ${kA(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function kA(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function xA(e){let t=e.whippings.map(i=>({one:i,words:TA(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${yw(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${ww(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Po("pipe.limits","How the limits come about",`${ss(e,0)}.limits`)}`}function TA({piping_s:e,lye_spoonfuls:t}){return[e?`${Yn(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${Yn(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Tw(e){return tt({name:"lye",title:"Lye",drawing:SA,result:e?xw(e).map(RA):be("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${xw(e).map(DA)} ${PA(e)}</div>`:u}
        <div class="more">${Eb()} ${Nb(e)}</div>`})}function xw(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=ka(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:ss(e,r),pieces:t,key:rs(r)}});return[n,...o]}function RA({title:e,batter:t,slot:n,pieces:o}){let i=Qn(n,o).length?" \u26A0":"";return be(s`${e}: ${R(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Ze(t.superfat_percent.effective)}${i}</b>.`)}var SA=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function DA({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,d=Qn(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${F({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${F({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${Ze(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${$r(e,c,i)} ${Rw(n.superfat_percent)} ${AA(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?u:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Rw(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${Ze(t)} and ${Ze(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Ze(o)} and ${Ze(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return cd(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function AA(e,t,n){return e.heat?s`${Sw(e.heat)} ${Po(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Sw(e){let t=i=>P(hg(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?Yn(i.shortest_min*60):"at once"} to ${Yn(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function PA(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,d,c="")=>F({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${d}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(t.strength_percent,1)} %${_e(e)&&`; ${_e(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",X(n,he(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,X(n,he(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",X(n,he(t,"lye_")),"lye_g",OA(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,X(n,he(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${Ze(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,X(n,he(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${$r(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Rw(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${P(X(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Sw(t.heat):u}
  </div>`}function OA(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=he(e,"lye_"),i=X(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${P(i)} with the pot: make up with water to that after cooling`}var as=new Map,MA=()=>as.clear(),BA=e=>typeof e?.owned=="number"?e.owned:void 0;function kp(e){let t=Ge(e,a.files?.moulds);return as.has(t)||(as.set(t,void 0),FA(t)),as.get(t)}async function FA(e){try{as.set(e,BA(we((await Me(e)).text))),Q()}catch(t){if(!(t instanceof y))throw t}}async function Dw(e,t){let n=kp(e);n!==void 0&&(Y("studio",t,n),B(`${n} kept in the studio`),await CA(Ge(e,a.files?.moulds)),ce())}async function CA(e){let t=await Ce(Qe,e);t.shipped||t.theirs||(Re(t,A(t.now,"/owned",void 0)),await Gt(t),MA())}function Ml(e=!1){let t=(n,o,i,r=!1)=>h({of:"studio",label:o,at:`/work/${n}`,unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var Bl=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Fl=e=>e[0].toUpperCase()+e.slice(1),Cl=e=>h({...e,of:"studio"});function Aw(){return!xn()&&a.run.file&&a.open.has("folded studio days")&&il("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${O({of:"studio",name:"days",pointers:["/days",...qt()?[]:["/work"]],summary:s`<span>When you work${s`<small>${LA()}</small>`}</span>`,body:IA})}
  </section>`}function LA(){let e=g("studio","/days/making")??{};return Bl.filter(t=>e[t]).map(t=>`${Fl(t)} ${String(e[t])}`).join(", ")}var IA=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${Bl.map(e=>Cl({label:Fl(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${L("studio","/days")} ${L("studio","/days/making")} ${WA()} ${EA()} ${jA()}
    ${qt()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${Ml(g("studio","/days")!==void 0)}</div>
            ${L("studio","/work")}`}`;function WA(){let e="/days/small_jobs",t=J("studio",e),n=te("studio",e),o=l=>{let d=Bl.filter(p=>p===l!==n.includes(p)),c=p=>Tn(A(p,e,d.length?[...d]:void 0),"/days");lt("studio",`${Fl(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=We("studio",e),r=Bl.filter(l=>n.includes(l)||!D("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Fl(l)}
          </button>`)}
    </div>
    ${ge(t,i,"Without any, these wait for a making day.")}
  </div>`}var ls={of:"studio",at:"/days/off",and:e=>Tn(e,"/days")};function EA(){return s`<p class="question">Days off and holidays</p>
    ${x(ls).map((e,t)=>NA(String(e),t))}
    ${Z(ls,"Add a day off",()=>q(ls,"","A day off"))}`}function NA(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=J("studio",n),l=ve("studio",n),d=(m,_)=>Y("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,w)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${M(b)}
        @input=${k=>w(k.target.value)}
        @blur=${Mo}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:u}
      />
      ${m===r?ge(r,l):u}
    </div>`,p=o?`off on ${ne(o)}`:`day off ${t+1}`;return s`<div class="row" id=${W(ls,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>d(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>d(o,m))} ${z(ls,t,p)}
  </div>`}function jA(){let e=(t,n,o)=>Cl({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${Cl({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${HA()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var HA=()=>Je({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>Cl({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var qA={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Pw=e=>({run:e,studio:e}),xp=e=>Pw(`/losses/${e}`);function Tp(e,t){return qA[e].map(({name:n,label:o,unit:i,optional:r})=>Pe(Pw(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var Rp={holds:"",paid:""},Ll=e=>({of:"studio",at:`/packs/${I(e)}`,in_order:!0,and:(t,n)=>n?t:_i(Tn(t,"/packs"),[`/serves_as/${I(e)}`])});function Mw(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function Bw(e,t){let n=new Set(Mw(t).map(o=>o.toLowerCase()));return pe("studio",e).find(o=>n.has(o.toLowerCase()))}var jo=e=>Bw("/packs",e),Fw=e=>Rt().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,Cw="money packs";function Lw(e){return s`${pe("studio","/packs").map(t=>UA(t,e))}
  ${No({key:"pack",label:"Which material comes in packs?",offers:Rt(),taken:t=>jo(t)!==void 0,take:Il})}`}function UA(e,t){let n=Ll(e),o=oe(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${x(n).map((i,r)=>JA(n,r,o,Fw(e),t))}
    <div class="row">
      ${Z(n,s`Another pack of ${o}`,()=>q(n,Rp,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${I(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${zA(e)}
    </div>
  </div>`}var Ow=e=>`/serves_as/${I(e)}`;function zA(e){let t=Ow(e),n=D("studio",t),o=new Set(Mw(e)),i=[...new Set([...Rt(),...pe("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",Ow(l))===void 0),r=l=>d=>Tn(A(d,t,l||void 0),"/serves_as");return!n&&(Rt().some(l=>o.has(l))||!i.length)?u:$e({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,oe(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>lt("studio",`${oe(e)}: ${l?oe(l):"a material of its own"}`,r(l))})}function JA(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),d=g("studio",`${r}/density`)!==void 0||We("studio",`${r}/holds`);return s`<div class="row" id=${W(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${KA(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${z(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function KA(e){let t=`${e}/from`,n=pe("studio","/sellers");return n.length?$e({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Il(e){let t=`/packs/${I(e)}`,[n,o]=[`/prices/${I(e)}`,`/money/prices/${I(e)}`],i=Si().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(QA),l=r.length?[...r,Rp]:[Rp];Bt([["studio",c=>VA(A(_i(c,[n]),t,l))],...i!==void 0?[["run",c=>_i(c,[o])]]:[]]),B(r.length?`The price of ${oe(e)} is its first pack now`:`${oe(e)} added`),Ee("studio",Cw),U(It(W(Ll(e),l.length-1)))}var VA=e=>$(e,"/currency")?e:A(e,"/currency",al());function QA(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var Iw=e=>s`<button
    type="button"
    aria-label="Another pack size of ${oe(e)}"
    @click=${()=>Il(e)}
  >
    Another pack size
  </button>`;function Ww(e){let t=jo(e),n=te("studio",Ll(t).at).length,o=()=>{Ee("studio",Cw),U(It(W(Ll(t),0)))};return s`<div class="row">
    <p>${oe(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${oe(e)}" @click=${o}>To its packs</button>
  </div>`}function Ew(){let e=t=>`/have/${I(t)}`;return s`${pe("studio","/have").map(t=>{let n=Fw(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:oe(t),at:e(t),unit:n,hint:o,short:!0})}
      ${Bo("studio","/have",t,oe(t))}
    </div>`})}
  ${No({key:"have",label:"Which material stands on the shelf?",offers:Rt(),taken:t=>Bw("/have",t)!==void 0,take:t=>E("studio",`${oe(t)} added`,e(t),"",ee("studio",e(t)))})}`}var Nw=({key:e})=>`money ${e}`;function qw(){if(!qt())return u;let e=YA(al());return!xn()&&e.some(t=>a.open.has(`folded studio ${Nw(t)}`))&&Xa(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${GA()}
    <div class="folds">
      ${e.map(t=>O({of:"studio",name:Nw(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:u}</span>`,body:t.body}))}
    </div>
  </section>`}var GA=()=>g("run","/money/currency")===void 0?u:s`<div class="row">
        ${Ho({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Ho=e=>h({...e,of:"studio"}),Wl=e=>pe("studio",e).map(oe).join(", "),Uw=e=>["/work",e].join("/");function YA(e){let t=(i,r,l={})=>Ho({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=D("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:Wl("/packs"),body:()=>Lw(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Wl("/sellers"),body:()=>XA(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:Wl("/have"),body:Ew},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:x(Ci).map(i=>oe(String($(i,"/material")))).join(", "),body:tP},{key:"work",title:"Work",pointers:["/work"],told:o(Uw("paid_an_hour"),` ${e} an hour`),body:()=>oP(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:iP},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${Ho({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Wl("/asking"),body:()=>rP(t)}]}var ZA=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:d},c)=>d===e?A(l,`/packs/${I(i)}/${c}/from`,n):l,o),t);function XA(e){let t=(n,o)=>`/sellers/${I(n)}/${o}`;return s`${pe("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Bo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${xr({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:ZA(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Ho({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${$i({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ee("studio",t(n,"postage"))})}`}var Ci={of:"studio",at:"/packaging"},eP=e=>!Rt().includes(e)&&!a.fats.some(t=>t.id===e);function tP(){let e=t=>x(Ci).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${x(Ci).map((t,n)=>nP(String($(t,"/material")??""),n))}
    ${No({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>pe("studio",t)).filter(eP),taken:e,take:t=>q(Ci,{material:t,each_piece:""},t)})}`}function nP(e,t){let n=jo(e)!==void 0||g("studio",`/prices/${I(e)}`)!==void 0;return s`<div class="row" id=${W(Ci,t)}>
    ${Ho({label:`${oe(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Il(e)}>
            Say its price
          </button>`}
    ${z(Ci,t,e)}
  </div>`}function oP(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(Uw("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${Ml()}
    </div>
    ${L("studio","/work")}`}var jw=(e,t)=>T({of:"studio",question:e,at:`/tax/${t}`,chosen:D("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),iP=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Je({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${Ho({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${jw("The prices you pay are","prices_paid")} ${jw("The prices you ask are","prices_asked")}`})}`,Hw=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function rP(e){let t=n=>`/asking/${I(n)}`;return s`${pe("studio","/asking").map(n=>sP(n,t(n),e))}
  ${$i({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ee("studio",t(n))})}
  ${aP(e)}`}function sP(e,t,n){let o=g("studio",t)??{},i=Hw.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>Ho({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${Bo("studio","/asking",e)}
    </div>
    <div class="row">${xr({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:Hw,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var us={of:"studio",at:"/price_endings"},aP=e=>s`<p class="question">A price ends in</p>
    ${x(us).map((t,n)=>s`<div class="row" id=${W(us,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${z(us,n,`ending ${n+1}`)}
        </div>`)}
    ${Z(us,"Add an ending",()=>q(us,"","An ending"))}`;var lP=e=>se()&&jo(e)===void 0&&Si().length>0;function zw(){if(!qt())return s`<button type="button" @click=${uP}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${I(t)}/${n}`;return{run:sl.run+o,studio:sl.studio+o}};return s`<div class="row">
      ${Pe(cn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Rt().map(t=>jo(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${Pe(e(t,"paid"),{label:`${oe(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Pe(e(t,"for"),{label:`for how much ${oe(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${lP(t)&&on(e(t,"paid"))?Iw(t):u}
            </div>`:Ww(t))}
    </div>
    ${Rt().length?u:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function uP(){let e=se()?"studio":"run",t=e==="studio"?cn.studio:cn.run;E(e,"Prices added",t,"",ee(e,t))}var Li=e=>({run:e,studio:e}),Sp=e=>({run:`/pipe/${e}`,studio:`/${e}`}),dP=Li("/scales"),Jw=Li("/spoilage"),cP=Li("/pots");function Dp(e){return tt({name:"studio",title:"My studio",result:be(pP()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>mP(e)})}function pP(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function mP(e){let t=fP(e),n=[...t.flatMap(o=>o.all),...et()?[Wa]:[]];return s`${se()?u:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{vd(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${Xn(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${se()?s`${qw()} ${aw()} ${Aw()}`:u}`}function fP(e){let t=ut(),n=[{title:"Scales",all:[dP],body:hP},{title:"Losses",all:[xp("pour"),...t?[xp("pipe")]:[]],body:()=>gP(t,e)},{title:"Rejects",all:[Jw],body:$P},{title:"Pot and lye jug",all:[cP],body:bP},{title:"Moulds owned",all:Kw().map(({shared:o})=>o),body:yP},{title:"Prices paid",all:Si(),body:zw}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Sp),body:wP},{title:"Weigh-cups",all:[],body:v_}),se()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[Mi],body:gp}),n}function hP(){let e=(t,n)=>s`${Pe(Li(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${Pe(Li(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function gP(e,t){return s`<div class="row">
      ${Tp("pour",e?"Base":void 0)} ${e?Tp("pipe","Topping"):u}
    </div>
    ${t?_P(t):u}`}function _P({pour:e,pipe:t,...n}){let o=_e({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:d})=>`${r}: ${P(N(a.units,l))} in the pieces, ${P(N(a.units,d))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var $P=()=>Pe(Jw,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function bP(){let e=(t,n,o)=>Pe(Li(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function wP(){let e=(n,o,i,r=!1)=>Pe(Sp(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>on(Sp(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Kw(){return["/pour",...x(De).map((t,n)=>Oi(n))].flatMap(t=>{let n=D("run",`${t}/mould`);return n?[{mould:n,shared:{run:Sb(t),studio:`/moulds_owned/${I(kd(n))}`}}]:[]})}function yP(){return s`<div class="row">
    ${Kw().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=on(t)===void 0?kp(e):void 0,i=()=>{Dw(e,`/moulds_owned/${I(kd(e))}`)};return s`${Pe(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&se()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Ap(e){let t=e&&bi(e);return s`${kP(e)}
    <div class="set-up">${Vw(t)} ${vP()} ${Dp(t)}</div>`}function Vw(e){return s`${_w(e)} ${ut()?bw(e):u}
  ${Gb()?Xb(e):u} ${Yb()?tw(e):u}
  ${et()?rw(e):u} ${Tw(e)} ${hp()?sw(e?.whole):u}`}function vP(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${ut()?u:s`<button type="button" @click=${k_}>Add a topping</button>${x_()}`}
      ${Ib()} ${R_()}
      ${hp()?u:s`<button type="button" @click=${jb}>Draft the label</button>`}
    </div>
  </section>`}function Qw(e=u){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${gi("Mould","/pour/mould",a.files?.moulds)}
    ${gi("Base","/pour/formula",a.files?.formulas)}
    ${ut()?gi("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function kP(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    ${Qw(e?xP(e):u)}
    <div class="batches">${e?qb(e):u} ${mp()}</div>
  </section>`}function xP(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,d=Ne(e)?`${l} batches, ${V(o,"filling")}`:xa(o,i);return F({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function TP(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(RP);return[wt({part:"Run"},()=>[Qw(),mp()]),...t.map(n=>wt({part:String(a.formulas[n].now.name||"Formula")},()=>l$(n))),Vw(),Dp()]}var RP=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;kg(TP);var SP={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Gw(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${SP[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var Pp="begin-title";function Yw(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return u;let{number:n,since:o}=e,i=o===void 0?void 0:Ao(n,o);if(i)return DP(i,e);if(t.beginning?.batch===n)return AP(t.beginning,e);let r=()=>{cb(n),U(C(Pp)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return s`<div class="begin-record">
    <button type="button" class=${e.is_due?"strong":""} @click=${r}>Lye is mixed: begin the record</button>
  </div>`}function DP(e,{show:t}){let{told:n}=a.record,o=()=>{dr(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${Tl(e)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===e.begun.id&&n.remarks.length?s`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>s`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function AP(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Ao(n),{complaint:d,is_asking:c}=e,p=!r&&!c&&!En(n);return s`<div class="begin-record asked" role="group" aria-labelledby=${Pp}>
    <p id=${Pp} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?PP(l,t):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${M(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>pb(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{op(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${np}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?OP(d,i):u}
  </div>`}var PP=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${Gr(e)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{np(),dr(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function OP(e,t){let n=e.choices??[];return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${e.problem}.`:`${j(e)}.`}
    </p>
    ${n.map(o=>s`<button type="button" class="answer" @click=${()=>{mb(o,t)}}>
          ${MP(o)}
        </button>`)}
  </div>`}function MP(e){let{confirmed:t,lot:n}=e;return e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${t??""}`}function Zw(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function Ii(e){let t=Wn(e);return t?.finished_at?"done":t||En(e)?"under way":"not begun"}var BP=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function FP(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>Ii(r)===i);return o("under way")??o("not begun")??1}function Op(){let e=BP(),t=FP(e),n=Wn(t),o=Zw(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Zw(n.plan,t):o}}var pn=({kept:e})=>!e&&a.is_old,Wi=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var CP=6,LP={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function ey({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${Ii(i)}`;return t>CP?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>Xw(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ue("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${LP[Ii(i)]}</span> ${i}<small>
          ${Ii(i)}</small
        >`]),i=>Xw(Number(i)))}function Xw(e){Ef(e),B(`Batch ${e}, ${Ii(e)}`)}var El="";function ty(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return IP(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!Nn(n,l).is_done).length,r=()=>i?ny(t.id):void Du(n);return s`<div class="batch-end">
    <p class="aside">Begun ${iy(t.begun_at)}; its weights stay as they were then.</p>
    ${El===t.id?oy(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Du(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${En(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function IP({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${iy(n)}.</p>
    ${El===o?oy("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{tr(t)}):s`<button type="button" @click=${()=>ny(o)}>Start this batch anew</button>`}
  </div>`}function ny(e){El=e,Q(),U(C("batch-stays"))}function oy(e,t,n){let o=()=>{El="",Q(),U(C("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var WP=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),iy=e=>WP.format(new Date(e));var EP={pour:"Base",pipe:"Topping"},ry=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function sy(e,t){let[n,o]=[ry(e),ry(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${EP[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Mp=3,Bp=new Map,Fp="";function NP(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Jp(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:j(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=sy(n.vessels,o.vessels),d=new Set(Wi(n).map(({text:p})=>p)),c=Wi(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function ay(e){let t=NP(e),{kept:n}=e;if(!t||!n)return u;if(Bp.get(n.id)===t.mark)return qP(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${jP(t)}
    </p>
    ${HP(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${st}</strong> As it is now: ${i}</p>`)}
    ${Fp===n.id?JP(e):UP(e,t)}
  </div>`}function jP({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Mp;return s`${e.slice(0,Mp).join("; ")}${n>0?` and ${n} more.`:"."}`}var HP=({told:e})=>e.length>Mp?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function qP(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Bp.delete(e),Q())}>What has changed</button>
  </div>`}function UP(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Bp.set(o,t),Q(),U(C("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>zP(e)}>Start this batch anew</button>`:u}
  </div>`}function zP(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void tr(e.number);Fp=o,Q(),U(C("keep-weighing"))}function JP(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Fp="",Q(),U(C("run-title"))},o=()=>{n(),tr(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var ly=({text:e})=>s`<p class="danger"><strong>${st}</strong> ${e}</p>`;function uy(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=Wi(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(ly)}</div>`:u}var KP=({vessel:e})=>["lye","lye_pot","share"].includes(e),VP=({batter:e},t)=>!e||!t.batter||e===t.batter;function dy(e,t){if(!KP(t))return u;let n=Wi(e).filter(o=>VP(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${ly(o)} ${QP(o)}`)}</div>`:u}function QP({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${YP}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>GP(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function GP(e){Ye(e),requestAnimationFrame(()=>U(ee(e,"/superfat")))}function YP(){f({view:"watch"}),U(C("watch-title"))}var Cp=(e,t)=>s`<p class="do ${pn(e)?"old":""}">${t}</p>`;function cy(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${P(Se(a.units,o))} below the brim`;return Cp(e,s`${r}, <b>${P(N(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function py(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Cp(e,s`Whip until the level weigh-cup holds <b>${P(N(a.units,n.net_g))}</b>.`):u}function my(e,{batch:t}){let{pipe:n}=t;return n?Cp(e,s`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${P(N(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function fy(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[$t(n)===o?n:t,""]}function hy(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return XP(e,t,n);let o=ZP(e,t,n);return o===void 0?void 0:{place:o}}function ZP({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return _y(i,r,e,n);case"layers":return tO(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Lp(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:Lp(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return eO(i,r,e,n)}}function XP({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var gy=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function eO(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,gy(e)),r=e.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:_y(e,t,n,o,"lye")}function Lp(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function _y(e,t,n,o,i=e.vessel){let r=gy(e),[l,d]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function tO(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Lp(e.name,t[o].colours,`${n}.${o}.colours`)}function Ip(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>Nn(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${$y(n)}>
    <div class="vessel-head">
      <h3 id=${$y(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${dy(t,n)}
    ${Sa(n.rows,({key:r})=>r,r=>nO(e,t,n,r))}
  </section>`}var $y=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function nO(e,t,n,o){let{is_done:i,is_waiting:r}=Nn(e.number,o.key),[l,d]=fy(a.units,o),c=pn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${M(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>oO(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?s` <i>${d}</i>`:u}</span>
    </label>
    ${iO(e,t,n,o)}
  </div>`}function oO(e,{mark:t},n,o){if(!pn(e))return Lf(e.number,t,n.key,o.checked);o.checked=!o.checked,B("Not ticked: what is struck through is not to be weighed.")}function iO(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&hy(i,r,o);if(!l)return u;let d=`weigh.${e.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>He("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?gd(l.place):ga(l.working)}</div>`:u}`}function Wp(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function by(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||rO(e,t),o?.batch===e&&o.reading===t?o:void 0)}var Ep=!1;async function rO(e,t){let{planned:n}=a;if(Ep||!n)return;Ep=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await ms({...n,run:A(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...sO(r,e)}})}catch(r){if(!(r instanceof y))throw r;f({whip_today:{...o,complaint:j(r.complaint)}})}finally{Ep=!1}}function sO(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var jp,Np,aO=e=>jp??($t(e)==="oz"||!e&&a.units==="us"?"oz":"g");function wy(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=Ro(e.number),i=aO(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${kn("weigh_cup")}</div>
    ${Lt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${M(Np??o)}
        ?disabled=${r}
        @input=${l=>Np=l.target.value}
        @change=${l=>uO(e,t,l.target.value,i)}
      />
      ${ue("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],lO)}
    </div>
    ${dO(e,t,n,o)} ${pO(t,n)}
  </div>`}function lO(e){jp=e,Q()}function uO(e,{mark:t},n,o){Np=void 0;let i=Ue(n)?`${n.trim()} ${o}`:n.trim();if(jp=void 0,i===Ro(e.number))return Q();if(pn(e))return B("Not taken: the weights are not those of what is typed."),Q();If(e.number,t,i),e.kept&&ta(Ao(e.number,e.kept.begun_at),i)}function dO(e,t,n,o){if(!o)return u;let i=by(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${cO(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function cO({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${V(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function pO(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${P(N(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var ds="pour",yy=()=>Op().kept!==void 0;function vy(e){Ls(),Qs();let t=Op(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${ds} aria-labelledby="run-title">
    ${mO(t)} ${hO(t)}
    ${t.weights&&n?s`${uy(t.weights)} ${ay(t)} ${gO(t,t.weights,e)}`:u}
    ${t.weights&&n&&!Hp(t)?xy(t,t.weights,e):u}
    ${ty(t)}
  </section>`}function mO(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${fO(e,t)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${ey(e)}
    </div>
  </div>`}function fO(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),r=i.filter(({key:d})=>Nn(e.number,d).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${Nt(t,n)}</b>, ${r} of ${i.length} weighed`}function hO({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,d=o!==void 0&&En(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Nf}>I have looked</button>`:u}
    ${d?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function gO(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),d=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>Ip(e,t,_));return s`${vO(c,r)}
    <div class="batters ${c?"two":""}">
      ${Nl("ahead","To have ready",p(l))}
      ${Nl("base",c?"Base":"Batter",_O(e,t,i("pour"),l,n))}
      ${c?Nl("topping","Topping",[...p(i("pipe")),wO(e,t),Wp(i("pipe"),bO(e,t))]):u}
      ${Nl("after","At the end",p(d))}
    </div>`}var ky=({vessel:e})=>e==="lye"||e==="lye_pot";function Hp(e){let n=(e.weights?.vessels??[]).filter(o=>ky(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>Nn(e.number,o).is_done)}var xy=(e,{plan:t,batch:n,mark:o},i)=>Yw({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${Nt(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:pn(e),is_due:Hp(e),show:i}),Nl=(e,t,n)=>n.some(o=>o!==u)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function _O(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>Ip(e,t,m)),d=n.filter(p=>!r(p)),c=d.map(ky).lastIndexOf(!0);return[...l(d.slice(0,c+1)),Hp(e)?xy(e,t,i):u,...l(d.slice(c+1)),cy(e,t),...l(n.filter(r)),Wp([...o,...n],$O(e,t))]}var Ty=(e,t,n=u)=>s`<p class=${pn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>Ze(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,$O=(e,{batch:t})=>Ty(e,[t.pour],Zn("superfat_as_weighed")),bO=(e,{batch:t})=>Ty(e,t.pipe?.whippings??[]),wO=(e,t)=>s`${py(e,t)} ${wy(e,t)} ${my(e,t)}`,yO={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function vO(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>yO[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===ds)||(ds="pour"),s`<div class="narrow">${ue("What is shown",ds,o,kO)}</div>`)}function kO(e){ds=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Ry=()=>s`${Ti(yy()?"No new weights can be given.":void 0)} ${vy(()=>{pt("record")})}`;var xO={"set-up":Ap,watch:Gw,money:nb,days:X$,mould:kb,print:Rb};function Sy(e){let t=s`${Os().map(o=>sn(o))} ${Ps().map(an)}`;if(e==="weigh")return s`${t} ${Ry()}`;if(e==="record")return s`${t} ${$b(()=>{pt("weigh")})}`;let{plan:n}=a;return s`${t} ${Ti()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?xO[e](n):TO(e)}`}function TO(e){return a.complaint?e==="set-up"?Ap():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var RO=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Ay(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${RO}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Ea(e.sell),r=t.trim()&&n&&o&&i,l=()=>{de(async()=>{await ra({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${M(t)}
          @input=${d=>v(e,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Dy(e,"mould","Mould",SO())} ${Dy(e,"formula","Base",DO())}
      ${Na("new-run-sell",e.sell,d=>v(e,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?u:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var SO=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],DO=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function Dy(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(e,{[t]:l.target.value})}>
      <option value="" .selected=${M(e[t]==="")}>choose ...</option>
      ${o.map(([l,d])=>s`<option value=${l} .selected=${M(l===e[t])}>${d}</option>`)}
    </select>
  </div>`}var AO=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function Oy(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(AO),n=e.filter(o=>o.shipped);return s`${kt("Runs")} ${Ay()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?Ht(t,Py):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Ht(n,Py)}
    </section>
    ${xt("run")}`}function Py(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":V(t,"piece"),n??"",o?`due ${ne(o)}`:"",i?`made ${ne(i)}`:r?`changed ${ne(r)}`:""].filter(Boolean);return ln({kind:$o,one:e,facts:l,picture:PO(n),open:()=>Xt(e.file)})}var PO=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;function My(){let e=qn();return s`${kt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Da(Bn,"Each file is named by the studio, or by the runs that use its tips.",t=>ir(Bn,t))}
      ${e?Hg(e):u}
      ${Aa({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(zg(t)):qs(Bn,Fd(t)),tried:de})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${fr().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${xt("tips")}`}var Cy=document.getElementById("page");function Ly(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Y$()} ${ig()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!ft(e)&&e!=="order"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${MO()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var OO={runs:Oy,orders:U$,formulas:d$,moulds:c$,fats:e_,tips:My};function MO(){let{view:e,fault:t}=a;return mn(e)?Sy(e):ft(e)?OO[e]():e==="formula"?a$():e==="order"?q$():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Im(()=>{G_(),ht(Ly(),Cy),CO()});ht(Ly(),Cy);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||ft(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=wl();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Bh();Pt()});function BO(){if(!a.run.file)return qp();f({fault:void 0}),Pt(),ce()}function qp(){f({fault:void 0}),i$().catch(e=>{f({fault:FO(e)}),e instanceof y&&e.may_pass&&window.setTimeout(qp,2e3)})}function FO(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var By=new ResizeObserver(([{target:e}])=>Iy(e.offsetHeight)),Fy=null;function CO(){let e=document.querySelector(".foremost");e!==Fy&&(By.disconnect(),e?By.observe(e):Iy(0),Fy=e)}var Iy=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);tg();o$();zp(e=>{xi(),e&&BO()});qp();
