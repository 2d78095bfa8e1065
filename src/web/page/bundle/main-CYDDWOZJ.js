import{A as zc,B as Jc,C as Fe,D as Vc,E as Kc,F as Qc,G as tt,H as ht,I as Gc,J as Yc,K as ae,L as nn,M as yi,N as Ce,O as Za,P as Zc,Q as Xc,S as tp,T as ep,U as np,a as Dc,b as Pc,c as J,d as y,e as Oc,f as Mc,g as $i,h as Ls,i as Dt,j as Ro,k as Fc,l as Cc,m as wi,n as Lc,o as Wc,p as bi,q as Bc,r as Ec,s as Ws,t as Ic,u as jc,v as qc,w as Hc,x as Nc,y as yn,z as Uc}from"./chunk-NOD6VTU6.js";var Bs=globalThis,Is=Bs.ShadowRoot&&(Bs.ShadyCSS===void 0||Bs.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,ip=Symbol(),op=new WeakMap,Es=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==ip)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Is&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=op.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&op.set(n,e))}return e}toString(){return this.cssText}},sp=t=>new Es(typeof t=="string"?t:t+"",void 0,ip);var rp=(t,e)=>{if(Is)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Bs.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},Xa=Is?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return sp(n)})(t):t;var{is:Hw,defineProperty:Nw,getOwnPropertyDescriptor:Uw,getOwnPropertyNames:zw,getOwnPropertySymbols:Jw,getPrototypeOf:Vw}=Object,js=globalThis,ap=js.trustedTypes,Kw=ap?ap.emptyScript:"",Qw=js.reactiveElementPolyfillSupport,vi=(t,e)=>t,tl={toAttribute(t,e){switch(e){case Boolean:t=t?Kw:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},up=(t,e)=>!Hw(t,e),lp={attribute:!0,type:String,converter:tl,reflect:!1,useDefault:!1,hasChanged:up};Symbol.metadata??=Symbol("metadata"),js.litPropertyMetadata??=new WeakMap;var on=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=lp){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&Nw(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=Uw(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);s?.call(this,l),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??lp}static _$Ei(){if(this.hasOwnProperty(vi("elementProperties")))return;let e=Vw(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(vi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(vi("properties"))){let n=this.properties,o=[...zw(n),...Jw(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(Xa(i))}else e!==void 0&&n.push(Xa(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return rp(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:tl).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),l=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:tl;this._$Em=i;let d=l.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let l=this.constructor;if(i===!1&&(s=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??up)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),s!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:l}=s,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};on.elementStyles=[],on.shadowRootOptions={mode:"open"},on[vi("elementProperties")]=new Map,on[vi("finalized")]=new Map,Qw?.({ReactiveElement:on}),(js.reactiveElementVersions??=[]).push("2.1.2");var nl=globalThis,dp=t=>t,qs=nl.trustedTypes,cp=qs?qs.createPolicy("lit-html",{createHTML:t=>t}):void 0,ol="$lit$",sn=`lit$${Math.random().toFixed(9).slice(2)}$`,il="?"+sn,Gw=`<${il}>`,to=document,xi=()=>to.createComment(""),Ti=t=>t===null||typeof t!="object"&&typeof t!="function",sl=Array.isArray,_p=t=>sl(t)||typeof t?.[Symbol.iterator]=="function",el=`[ 	
\f\r]`,ki=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,pp=/-->/g,mp=/>/g,Zn=RegExp(`>|${el}(?:([^\\s"'>=/]+)(${el}*=${el}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),fp=/'/g,hp=/"/g,$p=/^(?:script|style|textarea|title)$/i,rl=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=rl(1),T=rl(2),PA=rl(3),Pt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),gp=new WeakMap,Xn=to.createTreeWalker(to,129);function wp(t,e){if(!sl(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return cp!==void 0?cp.createHTML(e):e}var bp=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",l=ki;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,$=0;for(;$<c.length&&(l.lastIndex=$,m=l.exec(c),m!==null);)$=l.lastIndex,l===ki?m[1]==="!--"?l=pp:m[1]!==void 0?l=mp:m[2]!==void 0?($p.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Zn):m[3]!==void 0&&(l=Zn):l===Zn?m[0]===">"?(l=i??ki,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Zn:m[3]==='"'?hp:fp):l===hp||l===fp?l=Zn:l===pp||l===mp?l=ki:(l=Zn,i=void 0);let v=l===Zn&&t[d+1].startsWith("/>")?" ":"";s+=l===ki?c+Gw:_>=0?(o.push(p),c.slice(0,_)+ol+c.slice(_)+sn+v):c+sn+(_===-2?d:v)}return[wp(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Ri=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,l=0,d=e.length-1,c=this.parts,[p,m]=bp(e,n);if(this.el=t.createElement(p,o),Xn.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Xn.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(ol)){let $=m[l++],v=i.getAttribute(_).split(sn),x=/([.?@])?(.*)/.exec($);c.push({type:1,index:s,name:x[2],strings:v,ctor:x[1]==="."?Ns:x[1]==="?"?Us:x[1]==="@"?zs:no}),i.removeAttribute(_)}else _.startsWith(sn)&&(c.push({type:6,index:s}),i.removeAttribute(_));if($p.test(i.tagName)){let _=i.textContent.split(sn),$=_.length-1;if($>0){i.textContent=qs?qs.emptyScript:"";for(let v=0;v<$;v++)i.append(_[v],xi()),Xn.nextNode(),c.push({type:2,index:++s});i.append(_[$],xi())}}}else if(i.nodeType===8)if(i.data===il)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(sn,_+1))!==-1;)c.push({type:7,index:s}),_+=sn.length-1}s++}}static createElement(e,n){let o=to.createElement("template");return o.innerHTML=e,o}};function eo(t,e,n=t,o){if(e===Pt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Ti(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=eo(t,i._$AS(t,e.values),i,o)),e}var Hs=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??to).importNode(n,!0);Xn.currentNode=i;let s=Xn.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new So(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new Js(s,this,e)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(s=Xn.nextNode(),l++)}return Xn.currentNode=to,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},So=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=eo(this,e,n),Ti(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Pt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):_p(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Ti(this._$AH)?this._$AA.nextSibling.data=e:this.T(to.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Ri.createElement(wp(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Hs(i,this),l=s.u(this.options);s.p(n),this.T(l),this._$AH=s}}_$AC(e){let n=gp.get(e.strings);return n===void 0&&gp.set(e.strings,n=new Ri(e)),n}k(e){sl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(xi()),this.O(xi()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=dp(e).nextSibling;dp(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},no=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,l=!1;if(s===void 0)e=eo(this,e,n,0),l=!Ti(e)||e!==this._$AH&&e!==Pt,l&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=eo(this,d[o+c],n,c),p===Pt&&(p=this._$AH[c]),l||=!Ti(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Ns=class extends no{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Us=class extends no{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},zs=class extends no{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=eo(this,e,n,0)??u)===Pt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Js=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){eo(this,e)}},yp={M:ol,P:sn,A:il,C:1,L:bp,R:Hs,D:_p,V:eo,I:So,H:no,N:Us,U:zs,B:Ns,F:Js},Yw=nl.litHtmlPolyfillSupport;Yw?.(Ri,So),(nl.litHtmlVersions??=[]).push("3.3.3");var le=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new So(e.insertBefore(xi(),s),s,void 0,n??{})}return i._$AI(t),i};var al=globalThis,Ao=class extends on{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=le(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Pt}};Ao._$litElement$=!0,Ao.finalized=!0,al.litElementHydrateSupport?.({LitElement:Ao});var Zw=al.litElementPolyfillSupport;Zw?.({LitElement:Ao});(al.litElementVersions??=[]).push("4.2.2");var vp=()=>{},ll=!1;function kp(t){vp=t}function V(){ll||(ll=!0,queueMicrotask(()=>{ll=!1,vp()}))}function xp(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var Y=t=>t.replaceAll("~","~0").replaceAll("/","~1");function w(t,e){let n=t;for(let o of xp(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function D(t,e,n){return ul(t,xp(e),n)}function ul(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=ul(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},l=ul(s[o],i,n);return l===void 0?delete s[o]:s[o]=l,s}var Tp=t=>Mc("GET",`/api/bench?run=${encodeURIComponent(t)}`),Rp=t=>$i("/api/bench/tick",t),Sp=t=>$i("/api/bench/weigh_cup",t),Ap=(t,e)=>$i("/api/bench/anew",{run:t,batch:e}),Dp=(t,e)=>$i("/api/bench/finish",{run:t,batch:e});var ot=(t,e)=>({name:t,label:e,unit:"mm"}),vn=ot("height","Floor to brim"),Vs={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},dl={block:{words:"Box, loaf or slab",measures:[ot("length","Longer side at the brim"),ot("width","Shorter side"),vn,Vs,{...ot("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ot("floor_diameter","Across the floor"),ot("brim_diameter","Across the brim"),vn]},fluted_cup:{words:"Fluted cup",measures:[ot("floor_diameter","Across the floor"),ot("brim_diameter","Across the brim"),vn,{name:"flutes",label:"Flutes",unit:"",count:!0},ot("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ot("across_flats","Across the flats"),vn,Vs]},dome:{words:"Bowl",measures:[ot("diameter","Across the brim"),vn]},half_ball:{words:"Half ball",measures:[ot("diameter","Across the brim")]},ball:{words:"Ball",measures:[ot("diameter","Across")]},half_ring:{words:"Half ring",measures:[ot("centre_diameter","Ring, middle to middle of the tube"),ot("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ot("outer_floor_diameter","Cup, across the floor"),ot("outer_brim_diameter","Cup, across the brim"),ot("post_floor_diameter","Post, at its foot"),ot("post_brim_diameter","Post, at its top"),vn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ot("height","Height"),ot("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[vn,Vs],points:{columns:[ot("x","From the left"),ot("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ot("side","Straight edge, tip to round"),vn,Vs]}},Pp=Object.fromEntries(Object.entries(dl).map(([t,{words:e}])=>[t,e])),Do=t=>dl[t]?.measures??[],kn=t=>dl[t]?.points;var cl=(t,e)=>String(w(t,e)??"").trim(),Si=t=>cl(t,"/shape/kind"),$e=(t,e)=>w(t,`/${e}`)!==void 0,pl=t=>["body","skin"].includes(cl(t,"/mesh/role"));function Yt(t,e){let n=w(t,e);return Array.isArray(n)?n:[]}function Op(t,e){return(kn(Si(t))?.columns??[]).map(({name:o})=>String(w(e,`/${o}`)??"").trim())}function Ai(t){return Yt(t,"/shape/points").flatMap((e,n)=>Op(t,e).every(Boolean)?[n]:[])}function Ks(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Yt(t,"/shape/points").flatMap((n,o)=>e(Op(t,n))?[o]:[])}var ml=t=>Yt(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Mp(t){let e=t,n=(o,i)=>{if(!Array.isArray(w(e,o)))return;let s=i.map(l=>w(t,`${o}/${l}`));e=D(e,o,s)};return kn(Si(t))&&n("/shape/points",Ai(t)),n("/water/weighings",ml(t)),e}function Qs(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Ai(t):ml(t);return`${n}/${s[Number(o)]??o}${i}`}function Di(t){let e=[],n=i=>cl(t,i)!=="",o=(i,s)=>{i||e.push(s)};if($e(t,"shape")){let i=Si(t);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of Do(i))o(c||n(`/shape/${l}`),d.toLowerCase());let s=kn(i);s&&o(Ai(t).length>=s.least,`${s.least} points at least`)}if($e(t,"water")){o(n("/water/temperature"),"the water's temperature"),o(w(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(w(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(ml(t).length>0,"a weighing of water")}return!pl(t)&&!$e(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var Nt=t=>t.slice(0,t.lastIndexOf("/")+1),Zt=t=>t.slice(t.lastIndexOf("/")+1),rn=(t,e)=>{let n=Nt(t);return n?Xw(n+e):e};function Xw(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function we(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Po(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===s))return s}}var tb=["mould","formula","run","file","own_fats","own_tips"];function fl(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?fl(o,i):tb.includes(n)?[i]:[]})}function hl(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...fl(t)])[n,o]=[D(n,i,void 0),D(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function gl(t,e){let n=["/id",...fl(t)].filter(o=>w(t,o)!==w(e,o));return o=>n.reduce((i,s)=>w(i,s)===w(t,s)?D(i,s,w(e,s)):i,o)}var oo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?Zt(e):we(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},io={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>we(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Oo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?Zt(e):we(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},_l=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>Zt(o),written:o=>o,is_begun:()=>!0}),Pi=_l("studio","studios","name"),Le=_l("fats","fats"),xn=_l("tips","tips","title"),Ut={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>we(String(t.name),".json"),written:t=>({...Mp(t),name:String(t.name??"").trim()}),is_begun:t=>$e(t,"shape")||$e(t,"mesh")};var Fp={},Cp={kind:oo,id:"",file:"",version:null,shipped:!1,now:Fp,saved:Fp,unanswered:[]},Ot={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Cp,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(ob()),folded:new Set,units:eb(),announcement:""},a=Ot;function eb(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var $l=t=>`numbers ${String(t.now.id??t.file)}`,nb=t=>({numbers:localStorage.getItem($l(t))??void 0,figure:""});function Oi(t){h({quote_wish:{...Ot.quote_wish,...t}});let{numbers:e}=Ot.quote_wish;e?.trim()?localStorage.setItem($l(Ot.run),e):localStorage.removeItem($l(Ot.run))}var Lp="set-up ";function ob(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function ib(){let t=[...Ot.open].filter(e=>e.startsWith(Lp));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(Ot,t),V()}var j=t=>h({announcement:t});function b(t,e){Object.assign(t,e),V()}function We(t,e){let{[t]:n,...o}=Ot.formulas;h({formulas:e?{...o,[t]:e}:o})}function It(t,e){let n=new Set(Ot[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Lp)&&ib()}function Mo(t=Cp){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:nb(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function it(t){Ot.open.has(t)||h({open:new Set(Ot.open).add(t)})}function so({list:t,called:e},n,o={}){if(!Ot.files)return;let i=Ot.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Ot.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},l=Ot.files[t].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,s),h({files:{...Ot.files,[t]:l}})}var sb=1e4,wl=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",wl);var Gs=[],Fo=()=>`bench ${a.files?.folder??""}`;function Xt(){try{return[...JSON.parse(localStorage.getItem(Fo())??"[]"),...Gs]}catch{return Gs}}function bl(t){try{t.length?localStorage.setItem(Fo(),JSON.stringify(t)):localStorage.removeItem(Fo()),Gs=[]}catch{Gs=t}}var rb=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function Wp(t){let e={...t,id:crypto.randomUUID(),tab:wl,at:Date.now()};bl([...Xt().filter(n=>!rb(n,e)),e])}var Ys=t=>bl(Xt().filter(e=>!t(e))),Bp=(t,e)=>bl(Xt().map(n=>n.run===t?{...n,run:e}:n)),yl=()=>Xt().find(t=>t.tab===wl||Date.now()-t.at>sb);var pt=["pour","pipe","apart"],wt=["studio","own_fats","own_tips"],Zs=t=>wt.includes(t);var vl=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],kl=()=>wt.flatMap(t=>a.beside[t]??[]),Ep=t=>t.filter(e=>e.theirs),an=t=>Ep([...vl(t==="apart"?["apart"]:["pour","pipe"]),...kl()])[0],Xs=()=>[a.run,...vl(pt),...kl()].filter(t=>t.is_taken&&!t.theirs),tr=()=>Ep([a.run,...vl(pt),...kl()]);var Mi=()=>a.formulas.apart?"apart":"run",Ip=t=>h({dangers:{...a.dangers,[Mi()]:t}});function xl(t){let e=t.cautions.filter(n=>n.severity==="danger");Ip(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function jp(t){t.lye_heavy&&Ip([{text:J(t),is_of_heat:!1}])}var qp={};function be(t,e){(qp[t]??=[]).push(e)}function bt(t,e){for(let n of qp[t]??[])n(e)}async function ue({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:$=[],tips:v=[]}=a.files??{},x=Po(e,[...d,...c,...p,...m,..._,...$,...v]);s?.(x);let G=await ab({file:x,version:null,text:n,from:o,goes_on:i});if(so(t,x,ht(G.there.text)??{}),G.is_new||l?.(G.there))return G.there}}async function ab(t){try{return{is_new:!0,there:await Ro(t)}}catch(e){if(!(e instanceof y)||e.status!==409)throw e;return{is_new:!1,there:e.answer}}}var er=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function ro({kind:t,id:e,file:n,version:o,shipped:i,now:s},l){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:tt(s),copy:l};localStorage.setItem(er(t)+e,JSON.stringify(d))}catch{}}function Tl(t,e){try{return JSON.parse(localStorage.getItem(er(t)+e)??"null")??void 0}catch{return}}var Tn=(t,e)=>localStorage.removeItem(er(t)+e),Hp=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function nr(t){let e=er(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Tl(t,o)??[])}var lb=300,K=t=>t.now!==t.saved;function ao(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Mt(t,e,n=e){let o=await ep(e),i=ub(t,JSON.parse(o.text),o.shipped),s=Tl(t,n),l=s?.copy&&o.shipped?await db(t,s,i):void 0;if(l)return Tn(t,n),Mt(t,l);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&cb(p,s,o),p}var ub=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function db(t,e,n){if(!a.files?.[t.list].some(s=>s.file===e.copy))return;let o=ht(e.text),i=ht((await Dt(e.copy)).text);if(!(!o||!i||tt(o)===tt(n)))return hl(t.written(o),i)?e.copy:void 0}function cb(t,e,n){let o=ht(e.text);if(!o||tt(o)===tt(t.now))return Tn(t.kind,t.id);b(t,{now:o}),!(e.version===n.version||n.shipped)&&(b(t,{version:e.version}),Gp(t,n))}function vt(t,e){let n=t.now;b(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),ro(t),bt("edited",{file:t,before:n})}var Np=new WeakMap,Rl=async t=>Np.get(t),Be=t=>Up(t,()=>pb(t)),Co=t=>Up(t,()=>t.shipped?zp(t,Jp):Promise.resolve());function Up(t,e){let n=Rl(t).then(e);return Np.set(t,n.catch(()=>{})),n}async function pb(t){!K(t)||t.theirs||await zp(t,t.shipped||!t.file?Jp:Vp)}async function zp(t,e){b(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof y&&b(t,{failed:J(n.complaint)}),n}}async function Jp(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),l=await ue({kind:e,name:e.new_name(t),text:tt(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>ro(t,m),is_own:({text:m})=>i!==void 0&&hl(s,ht(m)??{})}),d=JSON.parse(l.text),c=gl(s,d),p=t.now===o?d:c(t.now);Tn(e,n),b(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),K(t)&&ro(t),i!==void 0&&bt("copied",{file:t,from:i,renamed:c})}async function Vp(t){let{version:e,now:n}=t,o=tt(t.kind.written(n));b(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{or(t,n,(await Ro({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;Kp(t,i.answer),K(t)&&!t.theirs&&await Vp(t)}}function or(t,e,n){b(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),K(t)?ro(t):Tn(t.kind,t.id),so(t.kind,t.file,e)}function Kp(t,{version:e,text:n}){if(n===tt(t.kind.written(t.now)))return or(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(b(t,{unanswered:[]}),o)return b(t,{version:e,saved:void 0,theirs:void 0});let i=K(t)||t.theirs?void 0:ht(n);i?mb(t,i,e):Gp(t,{version:e,text:n})}function mb(t,e,n){bt("giving_way",{file:t}),b(t,{set_aside:t.now,is_taken:!0,now:e}),or(t,e,n),j(`${t.file} was changed outside this page, and stands here as it is now.`),bt("gave_way",{file:t})}var Qp=t=>b(t,{set_aside:void 0,is_taken:void 0});function Gp(t,{version:e,text:n}){b(t,{theirs:{version:e,text:n}}),ro(t),j(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),bt("conflict",{file:t})}function Yp(t){if(!t.theirs)return;let e=ht(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return b(t,{failed:n})}bt("giving_way",{file:t}),b(t,{set_aside:t.now,now:e}),or(t,e,t.theirs.version),bt("gave_way",{file:t})}function Zp(t){t.theirs&&(b(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),ro(t),bt("unwritten",{file:t}))}var lo=({theirs:t})=>t?.text===null;function Xp(t){lo(t)&&(Tn(t.kind,t.id),b(t,{saved:t.now,theirs:void 0,failed:void 0}),j(`${t.file} stays deleted.`),bt("left_deleted",{file:t}))}function tm(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;vt(t,e),b(t,{set_aside:o?void 0:n})}var em=t=>(t.theirs??t).version;function nm(t,e){b(t,{id:e,file:e}),bt("renamed",{file:t,renamed:n=>n})}async function om(t){let{version:e,text:n}=await Dt(t.file),o=ht(n);if(!o||t.theirs||e===t.version)return;let i=gl(t.now,o);if(K(t))return b(t,{version:e,now:i(t.now),saved:o});b(t,{version:e,now:o,saved:o}),bt("renamed",{file:t,renamed:i})}var im=t=>t.shipped||!t.file?[]:[[t.file,em(t)]];async function Sl(t,e,n,o){let i=t.file,s=()=>em(t)===e&&t.file===i;if(!s()||(await Rl(t),!s()))return!1;o(),await Al();let l=await fb(i,n);return await Rl(t),s()&&(Kp(t,l),K(t)&&!t.theirs&&bt("unwritten",{file:t})),!0}async function fb(t,e){let n=await e(t);return n===null?{version:n,text:null}:Dt(t)}var Al=()=>new Promise(t=>setTimeout(t,lb));var hb=400,gb=2e3,Dl=new WeakMap;function rm(t,e){clearTimeout(Dl.get(t)),Dl.set(t,window.setTimeout(()=>{Ee(t)},e))}var Rn=(t=a.run)=>rm(t,hb),_b=t=>t===a.run||t===a.order?.open;async function Ee(t=a.run){clearTimeout(Dl.get(t));try{await Be(t),K(t)&&!t.theirs&&_b(t)&&Rn(t)}catch(e){if(!(e instanceof y))throw e;e.may_pass&&rm(t,gb)}}async function ln(){for(let t of[a.run,a.order?.open])t?.file&&K(t)&&await Ee(t)}var sm=Promise.resolve();function Ie(){let t=sm.then($b);return sm=t.catch(()=>{}),t}async function $b(){for(let t of pt){let e=a.formulas[t];!e||!K(e)||e.theirs||(e.shipped&&t!=="apart"&&await Co(a.run),await Be(e))}for(let t of wt){let e=a.beside[t];e&&K(e)&&!e.theirs&&await Be(e)}}var un=t=>rn(a.run.file,t);function zt(t,e){let n=un(t);return e?.some(o=>o.file===n)?n:t}function am(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=zt(String(n?.mould??""),a.files?.moulds);return{file:Po("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...wb(e)}}}function wb(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var Sn=({lines:t})=>Array.isArray(t)?t:[];function dn(t){let e=Sn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var ye=new Map,Fi=new Set,bb={changed:{},unreadable:[]},Lo=()=>new Set([...pt.flatMap(t=>a.formulas[t]??[]),...wt.flatMap(t=>a.beside[t]??[])]);async function Wo(){let t=yb(),e=new Set([...Lo()].map(({file:o})=>o));for(let o of ye.keys())!t.has(o)&&!e.has(o)&&ye.delete(o);for(let o of Fi)t.has(o)||Fi.delete(o);let n=[...t].filter(o=>!ye.has(o));for(let[o,i]of await lm(n))ye.has(o)||ye.set(o,i)}async function lm(t){let e=t.filter(o=>!Fi.has(o)),n=e.length?await bi(new Map(e.map(o=>[o,null]))):bb;return Ml(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Pl=async t=>(await lm([t])).get(t)??null,Ol=()=>new Map([...ye].filter(([t])=>!Fi.has(t)));function yb(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(un(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(un("studio.json")),e(w(n,"/pour/mould")),e(w(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e(w(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e(w(n,`/${o}/formula`));for(let{file:o,now:i}of Lo()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Nt(o)+s).add(s)}e(w(a.beside.studio?.now,"/own_tips"));for(let o of vb())t.add(o);for(let o of wt)t.delete(a.beside[o]?.file??"");return t}function vb(){let{open:t}=a.order??{},e=new Set(t?Sn(t.now).map(({run:p})=>rn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...s,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(rn(t.file,"studio.json")),e.delete(a.run.file),e}function um(t,{changed:e}){let n=Object.keys(e).filter(o=>ye.has(o)&&ye.get(o)===t.get(o));for(let o of n)ye.set(o,e[o]);return n}var Ml=t=>t.forEach(e=>Fi.add(e));function dm(){return[...Lo()].flatMap(({file:t,version:e})=>{let n=ye.get(t)??e;return ye.delete(t),n===e?[]:[t]})}var cm=0,uo=()=>cm;function Fl(t){++cm,h({is_old:!0,changed_beside:t})}var kb=1e3,xb=450,ir=!1,co=!1,Cl=0;function at(){h({is_old:!0}),ir?co=!0:Bo()}async function Bo(){if(ir){co=!0;return}ir=!0,pm(!1);try{do co=!1,await Tb();while(co)}finally{ir=!1,pm(!0),V()}}async function fm(){let{run:t}=a,e={file:t.file,run:t.now},n=await np(e)?.catch(()=>{});!n||t!==a.run||a.plan||Hp()||(h({plan:n,planned:e}),xl(n))}var pm=t=>{document.documentElement.dataset.settled=String(t)};function mm(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function Tb(){let t=mm();try{await Ie(),await Wo(),t=mm();let{apart:e}=a.formulas;if(an(e?"apart":"run"))return h({is_old:!0});let n=uo(),o=e?am(e.file):{file:a.run.file,run:a.run.now},i=await Ws(o);if(window.clearTimeout(Cl),!t())return void(co=!0);h({plan:i,planned:o,complaint:void 0}),xl(i);let s=n===uo();h({is_old:co||!s}),s&&h({changed_beside:void 0})}catch(e){if(!(e instanceof y))throw e;if(!t())return void(co=!0);Rb(e)}}function Rb(t){h({is_old:!0}),window.clearTimeout(Cl);let e=()=>{h({complaint:t.complaint}),jp(t.complaint)};a.complaint||!a.plan?e():Cl=window.setTimeout(e,xb),t.may_pass&&window.setTimeout(at,kb)}var hm=2e3,te=t=>h({bench:{...a.bench,...t}}),Sb=()=>te({acts:Xt()});addEventListener("storage",({key:t})=>{t===Fo()&&Sb()});function sr(){let{file:t}=a.run;!t||a.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:Xt()}}),po().then(El))}function gm(t){let{file:e}=a.run;Bp(t,e),a.bench.run===t&&te({run:e,acts:Xt()}),a.bench.run===e&&po()}function rr(){let{run:t,version:e}=a.bench;return e===void 0||t!==a.run.file?void 0:{run:t,version:e}}var Ci=0;async function po(){let{run:t}=a.bench,e=Ci;try{let n=await Tp(t);if(t!==a.bench.run)return;if(e!==Ci)return await po();_m(n)}catch(n){if(!(n instanceof y))throw n;if(t!==a.bench.run)return;te({failed:J(n.complaint)}),$m(n)&&setTimeout(()=>a.bench.failed!==void 0&&void po(),hm)}}var _m=({batches:t,version:e,complaints:n=[]})=>te({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),$m=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Eo=t=>a.bench.batches.find(e=>e.batch===t),Wl=t=>a.bench.acts.filter(({run:e,batch:n})=>e===a.bench.run&&n===t),Io=t=>Wl(t).length>0;function mo(t,e){let n=Wl(t).find(i=>i.key===e),o=Eo(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Bl(t){let e=Wl(t).find(n=>n.reading!==void 0);return(e?e.reading:Eo(t)?.weigh_cup)??""}function wm(t,e,n){let{run:o}=a.bench,s=Eo(t)!==void 0||!a.planned?void 0:tt(a.planned.run);Wp({run:o,batch:t,seen:e,text:s,...n}),te({acts:Xt(),chosen:t,told:void 0}),El()}var bm=(t,e,n,o)=>wm(t,e,{key:n,done:o}),ym=(t,e,n)=>wm(t,e,{reading:n||null}),Ll=!1;async function El(){if(!Ll){Ll=!0;try{await navigator.locks.request(Fo(),Ab)}finally{Ll=!1}Xt().length&&setTimeout(()=>{El()},hm)}}async function Ab(){for(let t=yl();t;t=yl())if(!await Db(t))return}async function Db(t){let{id:e}=t;try{let n=await Pb(t);return++Ci,Ys(o=>o.id===e),Ob(n,t.run),!0}catch(n){if(!(n instanceof y))throw n;return $m(n)?(te({unsent:J(n.complaint)}),!1):(await Mb(t,n),!0)}}function Pb({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:l}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Rp({...d,key:i,done:s??!1}):Sp({...d,reading:l??null})}function Ob(t,e){let n=Xt();if(e!==a.bench.run)return te({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,l)=>s.batch-l.batch);te({acts:n,batches:i,unsent:void 0})}async function Mb(t,{complaint:e}){++Ci,Ys(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${J(e)}.`;te({acts:Xt(),unsent:void 0,told:{batch:t.batch,words:n}}),j(n),at(),await po()}async function Li(t){let{run:e}=a.bench;await vm(t,async()=>{let n=await Ap(e,t);return Ys(o=>o.run===e&&o.batch===t),n})}var Il=t=>vm(t,()=>Dp(a.bench.run,t));async function vm(t,e){let{run:n}=a.bench;try{let o=await e();if(++Ci,n!==a.bench.run)return;_m(o),te({acts:Xt(),told:void 0,chosen:t})}catch(o){if(!(o instanceof y))throw o;te({told:{batch:t,words:J(o.complaint)}})}}var km=t=>te({chosen:t,told:void 0}),xm=()=>te({told:void 0});var Fb=300,Cb=1200,ar="",Tm=0;function Wi(){let t={run:{file:a.run,now:a.run.now}};for(let e of pt){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of wt){let n=a.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function fo(t=""){let e=performance.now();t&&t===ar&&e-Tm<=Cb&&a.past.length||jl(Wi()),h({future:[]}),ar=t,Tm=e}var jl=t=>h({past:[...a.past,t].slice(-Fb)});function jo(t){jl(Rm(Wi(),t,()=>t.saved??{}))}function Rm(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function ql(t,e){let n=o=>o.map(i=>Rm(i,t,e));h({past:n(a.past),future:n(a.future)})}function Bi(){let t=a.past.at(-1);t&&(h({past:a.past.slice(0,-1),future:[...a.future,Wi()]}),Sm(t,"Undone"))}function Hl(){let t=a.future.at(-1);t&&(h({past:[...a.past,Wi()],future:a.future.slice(0,-1)}),Sm(t,"Redone"))}function Sm(t,e){ar="",h({typed:void 0});for(let n of[...wt,...pt,"run"])Lb(n,t);j(e)}function Lb(t,e){let n=e[t];if(Zs(t))return Wb(t,n);let o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&We(t,n.file),n.file.now!==n.now&&vt(n.file,n.now))}function Wb(t,e){e&&e.file===a.beside[t]&&e.file.now!==e.now&&vt(e.file,e.now)}var qo=t=>t===a.run||pt.some(e=>a.formulas[e]===t)||wt.some(e=>a.beside[e]===t);be("giving_way",({file:t})=>{qo(t)&&(ar="",jl(Wi()),h({typed:void 0}))});for(let t of["copied","renamed"])be(t,({file:e,renamed:n})=>ql(e,n));var Bb=1200,Nl="",Am=0;function Ho(t,e=""){let n=performance.now(),o=e&&e===Nl&&n-Am<=Bb&&t.past.length;b(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[Nl,Am]=[e,n]}function lr(t){let e=t.past.at(-1);e&&(b(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),Dm(t,e,"Undone"))}function ur(t){let e=t.future.at(-1);e&&(b(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),Dm(t,e,"Redone"))}function Dm({open:t},e,n){Nl="",h({typed:void 0}),vt(t,e),j(n)}function An(t){return t==="run"?a.run:t==="order"?a.order?.open:Zs(t)?a.beside[t]:a.formulas[t]}var Eb=t=>An(t)?.now,g=(t,e)=>w(Eb(t),e),O=(t,e)=>String(g(t,e)??"");function lt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function ut(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Pm(t,e){t==="order"&&a.order?Ho(a.order,e):fo(e===void 0?"":`${t} ${e}`)}function U(t,e,n){let o=An(t);!o||w(o.now,e)===n||(Pm(t,e),vt(o,D(o.now,e,n)))}function Om(t,e){let n=An(t);n&&(Pm(t),h({typed:void 0}),vt(n,e(n.now)))}function Dn(t){fo(),h({typed:void 0});for(let[e,n]of t){let o=An(e);o&&vt(o,n(o.now))}}var Ul=(t,e)=>{let{[t]:n,...o}=a.beside;h({beside:e?{...o,[t]:e}:o})};function dr(t){for(let e of wt)a.beside[e]===t&&Ul(e,void 0)}async function Ib(t,e){try{let n=await Mt(t,e);return K(n)&&jo(n),n}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function Pn(t,e,n){let o=a.beside[t];if(o?.file===n)return o;let i=await Ib(e,n);return Ul(t,i),i&&K(i)&&bt("unwritten",{file:i}),i?.theirs&&bt("conflict",{file:i}),i}var Fm=()=>un("studio.json");async function No(t=!1){let e=Fm(),n=(a.files?.studios??[]).some(o=>o.file===e);a.beside.studio?.file!==e&&(n||t?await Pn("studio",Pi,e):Ul("studio",void 0))}async function cr(){a.run.shipped&&await Co(a.run);let t=Fm();await Pn("studio",Pi,t)||(await jb(t),await Pn("studio",Pi,t))}async function jb(t){try{await Ro({file:t,version:null,text:tt({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof y)||e.status!==409)throw e}so(Pi,t)}var Mm=(t,e)=>Nt(t.file)+e;async function qb(t){try{return ht((await Dt(t)).text)!==void 0}catch(e){if(!(e instanceof y))throw e;return!1}}async function pr(t){let e=a.formulas[t];if(!e)return;e.shipped&&await Co(e);let n=String(w(e.now,"/own_fats")??"");if(n){let l=Mm(e,n);return Pn("own_fats",Le,await qb(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Nt(l.file)===Nt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Jl(Le,Mm(e,"my.fats.json"),i);return U(t,"/own_fats",Zt(s)),Pn("own_fats",Le,s)}async function zl(){a.run.shipped&&await Co(a.run);let t="/pipe/beads/own_tips",n=String(w(a.run.now,t)??"")||String(w(a.beside.studio?.now,"/own_tips")??"");if(n)return Pn("own_tips",xn,un(n));let o=Nt(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Nt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Jl(xn,`${o}my.tips.json`,s);return a.beside.studio?U("studio","/own_tips",Zt(l)):U("run",t,Zt(l)),Pn("own_tips",xn,l)}async function Ei(t,e){await Pn(t===Le?"own_fats":"own_tips",t,e)&&h({held_open:e})}function On(){let{view:t,held_open:e,beside:n}=a,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function mr(t,e){let n=t===Le;await Ei(t,await Jl(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function Jl(t,e,n){let{file:o}=await ue({kind:t,name:e,text:tt(n)});return so(t,o),o}function Cm(t,e){let n=(i,s)=>String(w(i,s)??"").endsWith(Zt(e));for(let i of pt)t===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&U(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===a.beside.own_tips&&n(a.run.now,o)&&U("run",o,t.file)}var ho=[],Uo=[],Ii=()=>ho.at(-1),Kl=()=>Uo.at(-1);function hr(t){ho=[...ho,t],Uo=[],h({list_told:t.words}),j(t.words)}async function Wm(){let t=Ii();t&&(await t.undo(),ho=ho.slice(0,-1),Uo=[...Uo,t],h({list_told:""}),j("Undone"),await de())}async function Bm(){let t=Kl();t&&(await t.redo(),Uo=Uo.slice(0,-1),ho=[...ho,t],h({list_told:t.words}),j("Redone"),await de())}async function de(){let[t,e]=await Promise.all([Ls(),Lc()]);h({files:t,removed:e})}async function Em(t,e){let{$schema:n,...o}=JSON.parse((await Dt(e.file)).text),i=`${e.name||zo(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},l=t.called?t.new_name(ao(t,s)):we(i,Ql(e.file)),{file:d}=await ue({kind:t,name:l,text:tt(s),from:e.file});await de();let c="";return hr({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await fr(d,!0),redo:()=>wi(c)}),d}var Ql=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",zo=t=>Zt(t).slice(0,-Ql(t).length||void 0),Im=(t,e)=>Nt(t)+e+Ql(t),Lm=t=>[a.run,a.order?.open,...pt.map(e=>a.formulas[e]),...wt.map(e=>a.beside[e])].find(e=>e?.file===t);async function jm(t,e,n){let o={name:e.name,note:e.note,stem:zo(e.file)};await Vl(t,e.file,n),await de();let i=Im(e.file,n.stem);hr({words:`Changed ${n.name||i}.`,undo:()=>Vl(t,i,o),redo:()=>Vl(t,e.file,n)})}async function Vl(t,e,{name:n,note:o,stem:i}){let s=Lm(e),l=s??await Mt(t,e),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=t.called?D(p,`/${t.called}`,n||void 0):p;if(tt(m)!==tt(l.now)&&(s&&qo(s)&&fo(),s===a.order?.open&&a.order&&Ho(a.order),vt(l,m),await Be(l),l.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=Im(e,i);if(_===e)return;let{renamed_in:$}=await Fc(e,_);s&&nm(s,_);for(let v of $){let x=Lm(v);x&&await om(x)}}async function fr(t,e){let{removed:n}=await Cc(t,e);a.run.file===t&&Mo(),a.order?.open.file===t&&h({order:void 0});let o=wt.map(i=>a.beside[i]).find(i=>i?.file===t);return o&&dr(o),n}async function qm(t,e){let n=await fr(t.file,e);await de(),hr({words:`Removed ${t.name||t.file}.`,undo:()=>wi(n),redo:async()=>n=await fr(t.file,!0)})}async function Hm({removed:t,file:e,name:n}){await wi(t),await de();let o="";hr({words:`${n||e} is back.`,undo:async()=>o=await fr(e,!0),redo:()=>wi(o)})}async function Nm({removed:t,file:e,name:n}){h({removed:await Wc(t),list_told:""}),j(`${n||e} is deleted for good.`)}async function Mn(){for(let t of["pour","pipe"]){let e=w(a.run.now,`/${t}/formula`);typeof e=="string"&&e?await Hb(t,zt(e,a.files?.formulas)):We(t,void 0)}}async function Hb(t,e){if(a.formulas[t]?.file===e)return;let n=pt.map(o=>a.formulas[o]).find(o=>o?.file===e);if(We(t,n),!n)try{let o=await Gl(e);We(t,o),K(o)&&bt("unwritten",{file:o}),o.theirs&&bt("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Gl(t){let e=await Mt(Oo,t);return K(e)&&jo(e),e}var ji=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Jo(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:l,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function zm(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let $=3*c[p+_],v=3*c[p+(_+1)%3],x=d[$+i]-e,G=d[v+i]-e;if(x>0==G>0)continue;let Gt=x/(x-G),Yn=[1e3*(d[$]+Gt*(d[v]-d[$])),1e3*s*(d[$+o]+Gt*(d[v+o]-d[$+o]))];x>0?m.push(Yn):m.unshift(Yn)}m.length===2&&l.push([m[0],m[1]])}return l}function Jm(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],l=n.get(e(i[0]))?.shift();for(;l;)s.push(l[0]),l=n.get(e(l[1]))?.shift();s.length>2&&o.push(s)}return o}function qi(t){let e=t.positions,[n,o,i,s,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),l=Math.min(l,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:Jm(zm(t,c)),left:1e3*i,right:1e3*s,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function Vm(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>Jm(zm(t,n+s*o,"level"))).reduce((s,l)=>Um(l)>1.001*Um(s)?l:s)}function Um(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Yl(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>e||Math.max(l,p)<e))for(let m of l===p?[s,c]:[s+(e-l)/(p-l)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var Km=40,Nb=2e3,Zl=0;async function Qm(t){let e=await Fe({kind:"glb",gauge:t}),n=Jo(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Vo(t){let[e,n]=await Promise.all([yn(t),Qm(t)]),o=qi(n);return{gauge:e,outline:o,above:Vm(n,o)}}async function Ub(t){let{pockets:e}=await yn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:Km},(i,s)=>`${(n*(s+1)/Km).toFixed(4)} mm`);return yn({...t,depth:o})}function ve(){zb()}async function zb(){let t=w(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Zl,n=zt(t,a.files?.moulds);try{let[o,i]=await Promise.all([Ub({file:n}),Qm({file:n})]);e===Zl&&h({measured:{mould:n,gauge:o,outline:qi(i)},measuring_failed:void 0})}catch(o){if(e!==Zl)return;if(!(o instanceof y))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ve,Nb)}}var Hi=()=>h({own_fats:{}});function Fn(t){let e=Ni(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function Ni(t){let e=a.formulas[t],n=w(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=a.beside.own_fats;if(o&&[Nt(e.file)+n,n].includes(o.file))return Ym(o.now)??"none";let i=`${e.file}
${n}`,s=a.own_fats[i];return s||(Gm(i,"waiting"),Jb(n,e.file).then(l=>Gm(i,l)),"waiting")}var Gm=(t,e)=>h({own_fats:{...a.own_fats,[t]:e}});async function Jb(t,e){for(let n of new Set([Nt(e)+t,t])){let o=Ym(await Vb(n));if(o)return o}return"none"}var Ym=t=>Array.isArray(t?.fats)?t.fats.map(Kb):void 0;async function Vb(t){try{return ht((await Dt(t)).text)}catch{return}}var Kb=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:Qb(n)});function Qb(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Ko=[],Ui;function gr(){Ko.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Ko.push(t);Ui===void 0&&Xm()}function Zm(t){let e=a.own_moulds[t];return!e&&t!==Ui&&!Ko.includes(t)&&Ko.push(t),Ui===void 0&&Ko.length&&Xm(),e}async function Xm(){for(;(Ui=Ko.shift())!==void 0;){let t=Ui,e=await Gb(t);h({own_moulds:{...a.own_moulds,[t]:e}})}}async function Gb(t){try{let{pockets:e}=await yn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof y))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var nf=()=>h({own_tips:{}}),Xl=!1;function zi(){return!a.tips&&!Xl&&(Xl=!0,Jc().then(t=>h({tips:t}),of).finally(()=>Xl=!1)),a.tips??[]}function tu(t){let e=un(t),n=a.beside.own_tips;if(n?.file===e)return ef(n.now);let o=a.own_tips[e];return o||!t||a.typed?o??[]:(tf(e,[]),Dt(e).then(({text:i})=>tf(e,ef(ht(i))),of),[])}var tf=(t,e)=>h({own_tips:{...a.own_tips,[t]:e}});function ef(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function of(t){if(!(t instanceof y))throw t}var _r=300,Yb=5e3,uf=2e3,Zb=500,sf=!1,Ji=new AbortController,df=()=>Ji.abort(),cf=()=>document.visibilityState==="hidden";function $r(){if(sf)return;sf=!0;let t=async()=>{Ji=new AbortController;let e=await Xb(Ji).then(()=>cf()?Yb:_r,()=>Ji.signal.aborted?_r:uf);await rf(_r),await rf(e-_r,Ji.signal),t()};t()}var rf=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),pf=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Lo()],mf=()=>new Map(pf().flatMap(im)),af=()=>JSON.stringify([[...mf().keys()],[...Ol().keys()],rr()?.run??null]);async function Xb(t){let[e]=dm();e!==void 0&&await lf(e);let[n,o]=[mf(),Ol()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),l=s&&!cf()?await ty(i,t):await bi(i,rr());l.bench!==void 0&&await po(),Ml(l.unreadable),await ey(n,l);let[d]=um(o,s?l:await bi(o));d!==void 0&&await lf(d)}async function ty(t,e){let[n,o]=[af(),Date.now()],i=window.setInterval(()=>{(af()!==n||Date.now()-o>Bc+uf)&&e.abort()},Zb);try{return await Ec(t,rr(),e.signal)}finally{window.clearInterval(i)}}async function ey(t,{changed:e}){let n=Lo();for(let o of pf()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await ny(o,i):await Sl(o,i,Pl,()=>{}))}}async function ny(t,e){await Sl(t,e,Pl,()=>Fl(t.file))&&(Hi(),at())}async function lf(t){Fl(t),await Al(),Hi(),nf(),h({measured:void 0}),ve(),gr(),await Promise.all([Mn(),No(!0)]),at()}async function hf(t){let e=await tp();h({files:e});let n=Xc(e,t.run);try{await je(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function gf(){let[t,e]=await Promise.all([Uc(),zc()]);h({fats:t,catalogue:e})}var oy=()=>new Promise(t=>setTimeout(t,400)),eu={};async function je(t,e="weigh"){if(!t)return h({view:"runs"});let n=eu={name:t},o=a.view;a.run.file&&K(a.run)&&await Ee();let i=await Mt(oo,t);if(eu!==n||(Mo(i),sr(),await Promise.race([fm(),oy()]),a.run!==i))return;a.view===o&&eu===n&&h({view:e}),localStorage.setItem("run",i.file),K(i)&&(jo(i),Rn());let s=Bo().finally(ve);await Promise.all([s,Mn(),No()]),$r()}var ff=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function wr(t){let e=a.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(o.cut={bar:{thickness:t.slice},...ff()?{}:{kerf:""}}),ff()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!a.run.shipped&&(o.money=e.money));let{file:i}=await ue({kind:oo,name:we(t.name,".run.json"),text:tt(o)});it("set-up pour"),t.slice&&it("set-up cut"),await je(i,"set-up")}var iy="examples/plain_bars.run.json";function Jt(t){Hi();let e=nn(a.view)?a.view:a.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Vi(t){let e=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===t);if(e)return Jt(e);a.run.file||await je(iy,"reading"),await sy(t)}async function sy(t){let e={past:a.past,future:a.future};h({run_steps:e,past:[],future:[]});try{We("apart",await Gl(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Jt("apart"),Bo()}async function ry(){let t=a.formulas.apart!==void 0;return await br()?(h({view:t?"weigh":a.came_from,typed:void 0}),!0):!1}async function br(){return a.formulas.apart?await ay()?(Bo(),!0):!1:!0}async function ay(){try{await Ie()}catch(e){if(!(e instanceof y))throw e;return h({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return j("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;We("apart",void 0);let t={...a.dangers,apart:[]};return h({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function _f(t){let e=a.view==="formula"&&a.formulas[a.formula_of]===t,n=a.formulas.apart===t;for(let o of["pour","pipe"])a.formulas[o]===t&&We(o,void 0);n&&await br(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function nu(t){let{file:e}=a.formulas.apart;await ry()&&U("run",`/${t}/formula`,e)}var ly=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),$f=t=>bf(ly(t));async function wf(t,e){let{$schema:n,...o}=JSON.parse((await Dt(t)).text);await bf({...o,name:e},t)}async function bf(t,e){let n=we(String(t.name),".formula.json"),{file:o}=await ue({kind:Oo,name:n,text:tt(t),from:e});await Vi(o)}var uy=30,yf=0,ou=!1,iu=!1;function su(t,e,n){let o=e==="mesh"?a.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),au()}var qe=()=>h({mould:void 0,mesh:void 0}),Qo=(t,e,n)=>su(ao(Ut,t),e,n);async function vf(t,e){let n=await Mt(Ut,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&b(n,{now:{...n.now,name:""}}),su(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function kf({id:t,file:e,text:n}){let o=e?await Mt(Ut,e,t):ao(Ut,JSON.parse(n),t);su(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var X=()=>a.mould,W=()=>X().open.now;function yt(t,e){Ho(X(),t),vt(X().open,D(W(),t,e))}var xf=()=>lr(X()),Tf=()=>ur(X()),dy=["name","note","owned","unmould_after"];function ru(t){let e=W(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!dy.includes(l)))&&b(X(),{is_old:!0});let i=n.some(l=>X().complaint?.field===`/${l}`),s=n.some(l=>!["name","note"].includes(l));(X().is_old||i||s)&&au()}function au(){clearTimeout(yf),yf=window.setTimeout(()=>{cy()},uy)}async function cy(){if(ou)return void(iu=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!$e(e,"shape")&&!$e(e,"mesh"))){if(Di(e).length)return b(t,{complaint:void 0});ou=!0;try{let n=Ut.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Vo(o);t.open.now===e&&b(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;t.open.now===e&&lu(n)}finally{ou=!1,iu&&au(),iu=!1}}}function lu(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,l=e?`${n}; ${o}`:t.message;b(X(),{complaint:{field:Qs(W(),e),line:l,keep:i&&{...i,at:Qs(W(),i.at)},about:s===void 0?void 0:Qs(W(),`${e}/${s}`)}})}var Rf={};async function Ki(t){let e=Rf={name:t},n=a.view;if(a.order?.open.file!==t){a.order&&K(a.order.open)&&await Ee(a.order.open);let o=await Mt(io,t);if(Rf!==e)return;let i=K(o)?[o.saved??{}]:[];h({order:{open:o,past:i,future:[],times:""},typed:void 0}),K(o)&&Rn(o)}a.view===n&&h({view:"order",typed:void 0}),$r()}function Sf(){h({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function Af(t){let e={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},n=io.new_name(ao(io,e)),{file:o}=await ue({kind:io,name:n,text:tt(e)});await Ki(o)}var Ft=()=>a.order,Df=()=>lr(Ft()),Pf=()=>ur(Ft());var yr=t=>Object.values(a.formulas).includes(t),Go=t=>Object.values(a.beside).includes(t),Of=t=>`${String(w(t,"/pour/formula"))}
${String(w(t,"/pipe/formula"))}`;function py(t,e){w(t,"/pour/mould")!==w(e,"/pour/mould")&&ve(),Of(t)!==Of(e)&&Mn(),at(),Rn()}var my=at;function fy(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String(w(s,o)??"").endsWith(Zt(e))?D(s,o,t.file):s;ql(a.run,i),i(a.run.now)!==a.run.now&&vt(a.run,i(a.run.now))}}async function hy(t){t===a.run?(Mo(),localStorage.removeItem("run"),h({view:"runs"})):t===a.mould?.open?qe():t===a.order?.open?Sf():Go(t)?dr(t):await _f(t),await de(),a.run.file&&at()}function Mf(){be("edited",({file:t,before:e})=>{t===a.run?py(e,t.now):yr(t)||Go(t)?my():t===a.mould?.open?ru(e):t===a.order?.open&&Rn(t)}),be("gave_way",({file:t})=>{if(t===a.mould?.open)return ru();t!==a.order?.open&&(t===a.run&&(ve(),Mn().then(at)),at())}),be("left_deleted",({file:t})=>{hy(t)}),be("unwritten",({file:t})=>{t===a.run||t===a.order?.open?Ee(t):(yr(t)||Go(t))&&at()}),be("conflict",({file:t})=>{(yr(t)||Go(t))&&h({is_old:!0})}),be("renamed",({file:t})=>{Go(t)&&a.held_open!==void 0&&h({held_open:t.file}),t===a.run&&(localStorage.setItem("run",t.file),ve(),Mn()),at()}),be("copied",({file:t,from:e})=>{yr(t)&&fy(t,e),Go(t)&&Cm(t,e),a.held_open===e&&h({held_open:t.file}),t===a.run&&(gm(e),localStorage.setItem("run",t.file),No().then(at))})}var ke=r`<span aria-hidden="true">⚠</span> Danger`;function Qi(t,e="",n){let o=Cn(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${ke}</strong> ${i}</p>`)}
  </div>`:u}function Cn(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Ff(){let t=ae(a.view)||a.view==="order"||Mi()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Cf=()=>Ff().length>0;function Lf(){let t=Ff(),e=$y();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${ke}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${gy()?r`<button type="button" @click=${_y}>To the question</button>`:u}
          </div>`:u}
  </section>`}var gy=()=>an(Mi())!==void 0&&!ae(a.view);function _y(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function $y(){if(!a.run.file||a.view==="reading")return"";let t=an(Mi());return t&&lo(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var cn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},vr=t=>(...e)=>({_$litDirective$:t,values:e}),Yo=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:wy}=yp,Wf=t=>t;var Ef=t=>t.strings===void 0,Bf=()=>document.createComment(""),Zo=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(Bf(),i),l=o.insertBefore(Bf(),i);n=new wy(s,l,t,t.options)}else{let s=n._$AB.nextSibling,l=n._$AM,d=l!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==l._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=Wf(c).nextSibling;Wf(o).insertBefore(c,i),c=p}}}return n},Ln=(t,e,n=t)=>(t._$AI(e,n),t),by={},kr=(t,e=by)=>t._$AH=e,If=t=>t._$AH,xr=t=>{t._$AR(),t._$AA.remove()};var F=vr(class extends Yo{constructor(t){if(super(t),t.type!==cn.PROPERTY&&t.type!==cn.ATTRIBUTE&&t.type!==cn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Ef(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Pt||e===u)return e;let n=t.element,o=t.name;if(t.type===cn.PROPERTY){if(e===n[o])return Pt}else if(t.type===cn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Pt}else if(t.type===cn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Pt;return kr(t),e}});var jt=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function pn(t,e){let n=jt(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>jt(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Tr(t,e){let n=jt(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Sr=28.349523125,Nf=25.4,yy=29.5735295625;function He(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function R(t,e){return vy(He(t,e))}var vy=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function ce(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${He(t,e)} %`:uu(t)?"just below 0 %":"0.0 %"}var uu=t=>t<0||Object.is(t,-0),Uf=t=>Math.abs(t-Math.round(t))<1e-6;function jf(t){return t?[0,1,2,3].find(e=>Uf(t*10**e))??3:0}function qf(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function ky(t){return[0,1,2].find(e=>t.every(n=>Uf(n*10**e)))??3}function Ar(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function Ct(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-ky([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var zf=.001;function Rr(t,e,n,o,i=1e-9){let s=10**n;return He(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var Hf=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function xy(t){if(!Hf.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return Hf.find(e=>Math.abs(e*Sr-t)<.6*zf)}function dt(t,e,n="nearest"){let o=e.scale_step_g||.1,i=xy(o),s=Math.min(.6*zf,o/2),l=i?Rr(e.g,1,qf(o),n):Rr(e.g,1,jf(o),n,s),d=i?Rr(e.g,Sr,jf(i),n,s):Rr(e.g,Sr,qf(o/Sr),n),[c,p]=[`${e.g_text??l} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Ar(t,c,p)}var C=(t,e,n=1,o="nearest")=>dt(t,{g:e,scale_step_g:10**-n},o);function Rt(t,e,n=1){return Ar(t,`${He(e,n)} ml`,`${He(e/yy,2)} US fl oz`)}function kt(t,e){return Ar(t,`${R(e,1)} mm`,Ty(e))}function Ty(t){let e=Math.round(Math.abs(t)/Nf*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),l=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",l].filter(Boolean).join(" ")} in`}var du=([t])=>t,A=([t,e])=>e?`${t} (${e})`:t;function Jf(t,e){return Ar(t,`${He(e,0)} \xB0C`,`${He(e*1.8+32,0)} \xB0F`)}function xe(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??Nf;return n*o}function Ne(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Ue=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function gt(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function St(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${gt(t)}`}var Vf=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),Gi=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,gt);function Dr(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function Wn(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function Gf(t){let e=xe(t.round?.radius);if(e)return Kf(e,T`<circle class="plain" r=${e} />`);let n=Ry(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?Kf(o,T`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var Kf=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function Ry({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return Sy(t);if(!Array.isArray(e))return;let n=e.map(o=>[Qf(o,"x"),-Qf(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function Qf(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(xe(n.replace(/^-/,""))??NaN)}function Sy({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[xe(e),xe(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,l)=>{let d=Math.PI*l/t,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var cu=!1;function Yf(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!cu&&Dy(),{workings:Ay(n?.workings,t),complaint:n?.complaint,is_old:o}}function Ay(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Dy(){let{plan:t,planned:e}=a;if(!(!t||!e)){cu=!0;try{let{how:n}=await Ic(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{cu=!1}}}var Zf=T`<path class="wall" d="M30 10l8 52h44l8-52" />`,pu={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:T`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Zf}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:T`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:T`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Zf}<path class="measure" d="M20 10h80" />`}};var mu=t=>`term ${t}`;function mn(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(mu(t))?"true":"false"}
    aria-label="What ${pu[t].name} means"
    @click=${()=>It("open",mu(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Te(t){if(!a.open.has(mu(t)))return u;let{name:e,words:n,drawing:o}=pu[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var Bn=t=>r`<span class="term">${mn(t)}${Te(t)}</span>`;function M({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:l,term:d}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>It("open",t)}
    >
      <span class="name">${e}${l?r`<small>${l}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${mn(d)}${Te(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?Pr(i):fu(o)}</div>`:u}
  </div>`}var go=(t,e,n)=>M({key:t,label:e,shown:["",""],of:n});function fu(t){let{workings:e,complaint:n,is_old:o}=Yf(t);return e.length?r`<div class=${o?"old":""}>${e.map(Pr)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Pr({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?r`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var _o,Yi=[],fn=()=>_o!==void 0;function ee(t,e,n,o){if(!_o||_o.some(s=>s.id===n))return;let i=Yi.flatMap(({part:s})=>s??[]);_o.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:Yi.flatMap(({fold:s})=>s??[])})}function pe(t,e){Yi.push(t);try{return e()}finally{Yi.pop()}}var Xf=()=>{},th=t=>{Xf=t},Or,Py=()=>[a.run.now,...Object.values(a.formulas).map(t=>t.now),...Object.values(a.beside).map(t=>t.now),a.formulas.apart,a.plan,a.fats,a.files];function Xo(){if(fn())return[];let t=Py();return Or?.of.length===t.length&&t.every((n,o)=>n===Or.of[o])||(Or={of:t,wanted:Oy()}),Or.wanted}function Oy(){_o=[],Yi=[];try{return Xf(),_o}finally{_o=void 0}}function eh(t){a.touched.has(t)||h({touched:new Set(a.touched).add(t)})}function nh(t,e){if(a.has_asked)return!1;let n=Xo().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var N=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Mr(t){if(t==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let e=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??e(a.quoted,a.quoted?.of)??e(a.run_days,a.run_days?.of[0])}function Lt(t,e){let n=Mr(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return me(t)&&!nh(t,n.field)?J(n):void 0}function xt(t,e){return Mr(t)?.field===e?Lt(t,e):void 0}function me(t){let e=Mr(t),n=An(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function My(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function ze(){let t=Mr();if(t)for(let e of["run",...pt,...wt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Lt(e,n)&&document.getElementById(N(e,n));if(o)return o}}function Fy(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=Cy(t,n);return o&&Ue(e)?`${e.trim()} ${o}`:e}function Cy(t,e){return Ne(g(e,t.at))||t.unit||""}var _t=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,hu=!1;addEventListener("pointerdown",()=>hu=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>hu=!1,!0);var Ly=()=>h({typed:void 0});function Zi(t){let{id:e}=t.target,n=()=>{Ly(),eh(e)};hu?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var Wy=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,By=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=N(e,t.at),o=g(e,t.at),i=Wy(o),s=a.typed?.key===n,l=s?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!t.optional||t.is_due===!0);d&&ee(e,t.at,n,t.label);let c=Lt(e,t.at),p=$=>{let v=$.target.value;h({typed:{key:n,text:v}});let x=Fy(t,v);U(e,x===void 0&&t.takes_part?My(e,t.at):t.at,x)},_=(s&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${gu(r`<label for=${n} data-said=${By(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${F(l)}
      @input=${p}
      @blur=${Zi}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${_t(n,c,_)} ${t.term?Te(t.term):u}
  </div>`}var gu=(t,e)=>e?r`<div class="labelled">${t}${mn(e)}</div>`:t;function qt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var H=t=>()=>document.getElementById(t),et=(t,e)=>H(N(t,e)),Re=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),Ey=()=>document.activeElement;function Z(t){requestAnimationFrame(()=>qt(t()))}function Se(t,e,n,o=Ey){j(e),Om(t,n),Z(o)}function B(t,e,n,o,i){Se(t,e,s=>D(s,n,o),i)}var fe=(t,e,n)=>`${N(t,e)}-${n}`;function E(t,e){let n=xt(t,e);return n?r`<p id=${N(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var oh=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function st(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${oh(e,n,o)}</div>`}function S({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let $=i?fe(t,n,e.replaceAll(/\W+/g,"-")):N(t,o),v=s===void 0&&!m;v&&ee(t,o,$,e);let x=i?void 0:xt(t,o),G=Gt=>{if(Gt===s)return;let Yn=l.find(([qw])=>qw===Gt)[1];B(t,`${e}: ${Yn}`,n,d(Gt),c&&et(t,c(Gt)))};return r`<div class="field asked ${x?"wants":""}">
    ${gu(r`<p class="question" id="${$}-label" data-said=${v?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${$}
      tabindex="-1"
      aria-labelledby="${$}-label"
      aria-describedby=${x||p?`${$}-said`:u}
    >
      ${oh(s,l,G)}
    </div>
    ${_t($,x,p)} ${_?Te(_):u}
  </div>`}function _u(t,e,n,o){let i=N("run",t),s=xt("run",t),l=()=>B("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${l}
      >
        ${e}
      </button>
    </div>
    ${_t(i,s)}`}function $t({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:l,take:d}){let c=N(e,n),p=Lt(e,n),m=l??O(e,n);!m&&!s&&ee(e,n,c,t);let _=!m||o.some(([x])=>x===m),$=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${x=>{let G=x.target.value;d?d(G):U(e,n,G||!s?G:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${$.filter(([x])=>x||s||!m).map(([x,G])=>r`<option value=${x} .selected=${F(x===m)}>${G}</option>`)}</select
    >${_t(c,p)}
  </div>`}function ti(t,e,n=[]){let o=zt(O("run",e),n);return $t({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Ae({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:l}){let d=fe(t,e,"part"),c=fe(t,e,"add"),p=()=>pe({part:o},l);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>B(t,`${o} added`,e,s,Re(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>B(t,`${o} removed`,e,void 0,H(c))}
      >
        Remove
      </button>
    </div>
    ${E(t,e)} ${p()}
  </div>`}var ih=(t,e)=>`folded ${t} ${e}`,Wt=(t,e)=>it(ih(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let l=ih(t,e);if(fn())return r`${pe({fold:l},s)}`;(i||n.some(p=>Lt(t,p)))&&it(l);let d=a.open.has(l);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),It("open",l)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var k=({of:t="run",at:e})=>lt(t,e),L=({of:t="run",at:e},n)=>fe(t,`${e}/${n}`,"item"),Fr=({of:t="run",at:e},n,o)=>fe(t,`${e}/${n}`,o),Iy=({of:t="run",at:e})=>N(t,e);function Xi(t,e,n,o){let{of:i="run",at:s,stays:l,and:d=c=>c}=t;Se(i,e,c=>d(D(c,s,n.length||l?n:void 0),n.length),o)}function I(t,e,n){let o=k(t);Xi(t,`${n} added`,[...o,e],Re(L(t,o.length)))}function jy(t,e,n){let o=k(t).filter((l,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);Xi(t,`${n} removed`,o,s?H(Fr(t,i,"drop")):et(t.of??"run",t.at))}function qy(t,e,n,o){let i=[...k(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let l=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;Xi(t,`${o} moved ${l}`,i,H(Fr(t,e+n,c)))}function q(t,e,n){let o=k(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let l=(d,c,p)=>r`<button
      type="button"
      id=${Fr(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>qy(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Fr(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>jy(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Q(t,e,n){let o=Iy(t),i=xt(t.of??"run",t.at);return r`${_t(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var $o="/pipe/beads",hn=`${$o}/tip`,Hy={of:"run",at:hn},Je={at:`${$o}/moves`,in_order:!0},$u="\0own",lh={tip:"",bead_to_opening:"",moves:[]},De=(t,e)=>({name:t,label:e,kind:"length"}),sh={name:"count",label:"How many",kind:"count"},rh=De("circle_radius","Radius of their circle"),wu={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[De("diameter","Diameter"),De("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[De("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},De("start_radius","Radius at the start"),De("end_radius","Radius at the end"),De("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[De("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[sh,rh,De("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[sh,rh,De("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[De("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function uh(t){return r`${Uy()} ${bu()?Lr(Hy):Qy()}
    ${f({label:"Bead \xF7 tip opening",at:`${$o}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(Je).map((e,n)=>ev(e,n,t))}</div>
    ${iv()}`}var bu=()=>typeof g("run",hn)=="object",dh=()=>String(g("run",`${$o}/own_tips`)??g("studio","/own_tips")??"");function Ny(){let t=dh(),e=t?tu(t):[];return g("run",`${$o}/own_tips`)===void 0?[...e,...zi()]:e}function Uy(){let t=n=>n===$u?B("run","a tip of your own",hn,{name:"",round:{radius:""}},Jy):U("run",hn,n),e=Ny().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${$t({label:"Tip",at:hn,answers:[...e,[$u,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:bu()?$u:void 0})}
  ${bu()?u:P({name:"tips",pointers:[`${$o}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${$o}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var zy=fe("run",hn,"own"),Jy=Re(zy);async function Vy(){let t=g("run",hn);if(!await zl())return;let e=lt("own_tips","/tips"),n=Ky(String(t.name).trim()||"My tip",e);Dn([["own_tips",o=>D(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>D(o,hn,n)]]),j(`${n} kept in ${a.beside.own_tips.file}`)}function Ky(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...zi()].some(i=>i.name===o))return o}}function Qy(){let t=O("run",hn),e=dh();if(!t||!e||!tu(e).some(o=>o.name===t))return u;let n=lt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{zl()}}>Change this tip of my own</button>`:Lr({of:"own_tips",at:`/tips/${n}`})}var ah=[["round","Round"],["star","Star"],["outline","Another outline"]],Cr={x:"",y:""},Gy={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Cr,Cr,Cr]};function Lr({of:t,at:e}){let n=ah.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...ut(t,e,n),[s]:Gy[s]});return r`<div class="part" id=${fe(t,e,"own")} role="group" aria-label="My own tip">
    ${E(t,e)} ${Yy({of:t,at:e})}
    ${S({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:ah,puts:i})}
    ${o?Xy({of:t,at:e},o):u}
    ${P({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>Zy({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{Vy()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var Yy=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${O(t,`${e}/name`)}</p>`;function Zy({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>B(t,"correction removed",n,void 0,Re(fe(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function Xy(t,e){if(e==="outline")return tv(t);let{of:n,at:o}=t,i=(s,l)=>f({of:n,label:l,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function tv({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>r`<div class="row" id=${L(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${q(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Q(n,"One more corner",()=>I(n,Cr,"corner"))}`}function ev(t,e,n){let o=wu[String(t.move)],i=`${Je.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${L(Je,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${q(Je,e,s)}
    </div>
    ${E("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>nv(i,l))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${ov(e,n)}
  </div>`}function nv(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:l,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function ov(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==k(Je).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return M({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:Rt(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function iv(){let t=o=>({move:o,...Object.fromEntries(wu[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=N("run",Je.at),n=xt("run",Je.at);return k(Je).length||ee("run",Je.at,e,"What the tip does"),r`${_t(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(wu).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>I(Je,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function Ve(t,e=()=>{}){if(!t.theirs)return u;let n=lo(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Zp(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>Xp(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>Yp(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function Ke(t){if(t.theirs||!t.set_aside||qo(t)&&!t.is_taken)return u;let e=()=>{qo(t)&&fo(),tm(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>Qp(t)}>Close</button>`:u}
    </div>
  </section>`}var Wr={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function ph(t,e){let n=Ni(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=lt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&a.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{sv(t,e)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>pe({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>yu(l))})}async function sv(t,e){await pr(t),Wt("own_fats",e);let n=lt("own_fats","/fats").findIndex(o=>o.id===e);Z(H(`f-own_fats-fats-${n}-name`))}var rv=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function yu(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${E("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${S({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:O("own_fats",`${t}/kind`)||void 0,answers:rv,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${av(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>lv(t)})}`}function av(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,l=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return r`${S({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function lv(t){let e=(o,i,s,l)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>B("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${E("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,s,l=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:l,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${uv(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var ch=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function uv(t){let e=Object.keys(g("own_fats",t)??{}),n=ch.filter(([l])=>!e.includes(l)),o=l=>ch.find(([d])=>d===l)?.[1]??l,i=l=>`${t}/${Y(l)}`,s=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>f({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>B("own_fats",`${o(l)} removed`,e.length>1?i(l):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${E("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${$t({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&B("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function ei(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:t}}var z=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,dv=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Qe(t,{pieces:e,casts:n}){let o=t.cut?z(e,"bar"):z(e,"piece");return n===e?o:`${o} from ${z(n,...dv(t))}`}var cv=t=>t===1?"once":`${t} times`,vu=t=>t.batches.length>1,Bt=t=>t.pieces.batches>1;function gn(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function ct(t){return Bt(t.whole)?`one batch, ${Qe(t.whole,t.batch)}`:""}var mh=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function ku(t,e){return mh(t)?`${Qe(t.whole,e)}${e.count>1?`, whipped ${cv(e.count)}`:""}`:""}function Br(t,e){let n=ku(t,e);return n&&`one whipping: ${n}`}var fh=t=>Bt(t.whole)||mh(t),Er=(t,e)=>`${z(t,"filling")} of ${z(e,"cavity","cavities")}`;var hh=t=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Ir(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${gn(e.map(hh))}.</p>`:u}function ni(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${gn(e.map(hh))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var ts={of:"own_fats",at:"/fats",least:1},jr={of:"own_tips",at:"/tips",least:1},wo=({of:t,at:e})=>lt(t,e);function gh(t){return $h(t,ts,"fats",e=>{let n=`/fats/${e}`;return P({of:"own_fats",name:String(wo(ts)[e].id),pointers:[n],summary:r`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${pv(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>yu(n)})})}function pv(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function _h(t){return $h(t,jr,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${Gf(wo(jr)[e])}
      ${P({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>Lr({of:"own_tips",at:n})})}
    </div>`})}function $h(t,e,n,o){let i=a.files?.[n].find(({file:l})=>l===t.file),s=l=>String(wo(e)[l].name||`number ${l+1}`);return r`${Ve(t)} ${Ke(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${ni(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${wo(e).map((l,d)=>r`<div class="held" id=${L(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${q(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var xu=(t,e)=>({...Wr,id:Tr(t,e),name:t});function wh(t){let e=xu(t,[...a.fats,...wo(ts)]);I(ts,e,t),Wt("own_fats",String(e.id)),Z(et("own_fats",`/fats/${wo(ts).length-1}/source`))}var Tu=t=>({name:t});function bh(t){I(jr,Tu(t),t);let e=wo(jr).length-1;Wt("own_tips",`tip ${e}`),Z(Re(fe("own_tips",`/tips/${e}`,"own")))}var yh=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},qr=vr(class extends Yo{constructor(t){if(super(t),t.type!==cn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],l=0;for(let d of t)i[l]=o?o(d,l):l,s[l]=n(d,l),l++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=If(t),{values:s,keys:l}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=l,s;let d=this.ut??=[],c=[],p,m,_=0,$=i.length-1,v=0,x=s.length-1;for(;_<=$&&v<=x;)if(i[_]===null)_++;else if(i[$]===null)$--;else if(d[_]===l[v])c[v]=Ln(i[_],s[v]),_++,v++;else if(d[$]===l[x])c[x]=Ln(i[$],s[x]),$--,x--;else if(d[_]===l[x])c[x]=Ln(i[_],s[x]),Zo(t,c[x+1],i[_]),_++,x--;else if(d[$]===l[v])c[v]=Ln(i[$],s[v]),Zo(t,i[_],i[$]),$--,v++;else if(p===void 0&&(p=yh(l,v,x),m=yh(d,_,$)),p.has(d[_]))if(p.has(d[$])){let G=m.get(l[v]),Gt=G!==void 0?i[G]:null;if(Gt===null){let Yn=Zo(t,i[_]);Ln(Yn,s[v]),c[v]=Yn}else c[v]=Ln(Gt,s[v]),Zo(t,i[_],Gt),i[G]=null;v++}else xr(i[$]),$--;else xr(i[_]),_++;for(;v<=x;){let G=Zo(t,c[x+1]);Ln(G,s[v]),c[v++]=G}for(;_<=$;){let G=i[_++];G!==null&&xr(G)}return this.ut=l,kr(t,c),Pt}});async function rt(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof y&&await de().catch(()=>{})}}var Ru=()=>{rt(Wm)},vh=()=>{rt(Bm)};function he(t){return r`<h1 tabindex="-1">${t}</h1>
    ${a.list_complaint?r`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Ii()?r`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Ru}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var kh=new Map,xh=Promise.resolve();function Th(t,e=""){let n=`${t}
${e}`,o=kh.get(n);return o||(o=xh.then(()=>mv(t)),xh=o,kh.set(n,o)),o}async function mv(t){try{let e=await Fe({kind:"glb",gauge:{file:t}}),n=Jo(await e.arrayBuffer());return qi(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof y)return;throw e}}var Su=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{Th(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void le(u,this);let{left:n,right:o,floor:i,brim:s,loops:l}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];le(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${ji(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Su);var Pe=(t,e)=>r`<ul class="cards">
    ${qr(t,({file:n})=>n,e)}
  </ul>`;function Ge(t){let{one:e,facts:n,picture:o,open:i}=t,s=a.list_open?.file===e.file?a.list_open:void 0,l=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{rt(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>fv(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?hv(t,s):u}
  </li>`}function fv({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:zo(n)}:void 0})}function hv(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{rt(()=>_v(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&zo(o.file)===e.stem,l=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{rt(()=>$v(t,e))};return r`<div class="acts">
    ${Ir(o)} ${n.called?Au(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Au("Note",e,"note")} ${Au("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!l||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{rt(()=>Rh(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?gv(o,e):u}
  </div>`}function Au(t,e,n){let o=`list-${n}`,i=s=>b(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${F(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function gv(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{rt(()=>Rh(t,e,!0))}}>Remove it even so</button>
  </div>`}async function _v(t,e){let n=await Em(t,e),o=a.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:zo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function $v({kind:t,one:e},{name:n,note:o,stem:i}){await jm(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function Rh(t,e,n){let o=t.used_by??[];if(o.length&&!n)return b(e,{used_by:o});try{await qm(t,n),h({list_open:void 0})}catch(i){let s=i instanceof y?i.answer.used_by:void 0;if(!s)throw i;b(e,{used_by:s})}}function Hr(t,e,n){let o=[...a.files?.[t.list]??[]].sort((s,l)=>Number(s.shipped)-Number(l.shipped));return o.length?Pe(o,s=>Ge({kind:t,one:s,facts:wv(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var Sh=4;function wv({holds:t=[],changed:e}){let n=t.length-Sh,o=n>0?[...t.slice(0,Sh),`${n} more`]:t;return[o.length?gn(o):"",e?`changed ${gt(e)}`:""].filter(Boolean)}var es="";function Nr({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(es.trim()),es="",V()})},s=l=>{es=l.target.value,V()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${F(es)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!es.trim()} @click=${i}>${e}</button>
  </div>`}function ge(t){let e=a.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(bv)}
    </ul>
  </details>`:u}function bv(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=a.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${gt(t.removed_at)}, kept until ${gt(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{rt(()=>Hm(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{rt(()=>Nm(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>It("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>It("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function Dh(){let t=On();return r`${he("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Hr(Le,"Each file is named by the formulas that use its fats.",e=>Ei(Le,e))}
      ${t?gh(t):u}
      ${Nr({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(wh(e)):mr(Le,xu(e,a.fats)),tried:rt})}
    </section>
    ${yv()} ${ge("fats")}`}var Ah="fats that are listed";function yv(){let t=a.finding?.key===Ah?a.finding.text:"",e=a.fats.filter(n=>pn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${F(t)}
          @input=${n=>h({finding:{key:Ah,text:n.target.value}})}
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
          ${e.map(n=>vv(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function vv(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=pn(t,e),l=d=>R(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var Ph=t=>t.goes_into==="lye",Oh=({role:t})=>t==="alkali",kv=t=>Oh(t)?"down":"nearest",bo=(t,e)=>dt(t,e,kv(e));function Ur(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>Ph(i)),n=({one:i})=>i.role==="water",o=({one:i})=>Oh(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Mh(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!Ph(e))}function Du(t){let e=O(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${f({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${f({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Sv(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var xv=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Fh={after:"",mass:""},Ch=3,Tv={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Ch},()=>Fh)}}};function Rv(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Sv(t){let e=Rv(t);return r`${S({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:xv,puts:o=>({...ut(t,"",["drying","water_lost_in_cure"]),...Tv[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?Av(t):u}`}function Av(t){let e={of:t,at:"/drying/weighings",least:Ch};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(e).map((n,o)=>r`<div class="row named" id=${L(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${q(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Q(e,"One more weighing",()=>I(e,Fh,"weighing"))}`}var Dv=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],zr=t=>Fn(t).map(e=>[e.id,e.name]),Lh=["unsaid","Not given"],Wh=["none","Holds none"],Bh=t=>t===void 0?"unsaid":t==="none"?"none":"some",Pv=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Eh(t,e){return Pu(t,`${e}/contains_fat`,[Lh,Wh,["some","Holds fat"]],zr(t))}function Pu(t,e,n,o){let i=Bh(g(t,e)),s=n.some(([l])=>l===i)?i:void 0;return r`${S({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:Pv({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${$t({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Ov=[Lh,Wh,["some","Holds acid"],["typed","By what it takes up"]],Mv={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Ou(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Bh(g(t,n));return r`${S({of:t,question:"Acid in it",at:n,chosen:o,answers:Ov,puts:i=>Mv[i]})}
  ${o==="some"?r`<div class="row">
          ${$t({label:"Which acid",of:t,at:`${n}/acid`,answers:Dv.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Mu(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Mu(t,e,n){let o=g(t,e)===!0?"yes":"no";return S({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Fv=["tsp/lb","tbsp/lb","tsp/kg"],Jr=["%","g/kg",...Fv].flatMap(t=>[`${t} of fats`,`${t} of batter`]),jh=[...Jr,"% of finished soap","g/kg of finished soap"];function Ih(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function Vr(t,e,n,o,i=!1){let s=N(t,e),[l,d]=Ih(O(t,e),o),c=a.typed?.key===s?a.typed.text:l;!i&&!(l.trim()&&d)&&ee(t,e,s,l.trim()?`${n}: of what`:n);let m=Lt(t,e),_=(v,x)=>{let G=`${v.trim()} ${x}`.trim();U(t,e,i&&!v.trim()?void 0:G),V()},$=v=>{let x=v.target.value,[G,Gt]=Ih(x,o);h({typed:{key:s,text:x}}),_(G,Gt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${F(c)}
        @input=${$}
        @blur=${Zi}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${v=>_(c,v.target.value)}
      >
        <option value="" .selected=${F(d==="")}>of what?</option>
        ${o.map(v=>r`<option value=${v} .selected=${F(v===d)}>${v}</option>`)}
      </select>
    </div>
    ${_t(s,m)}
  </div>`}function Cv(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var Lv=.01+1e-9;function Kr(t,e){let{sum:n,unread:o}=Cv(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=Lv?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var qh=(t,e)=>Fn(t).find(n=>n.id===e)?.name??e,ns=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),Qr=t=>k(ns(t));function Lu(t){let e=Qr(t),n=a.picking?.of===t&&a.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>Wv(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?Kr("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:ee(t,"/fats",N(t,"/fats"),"The fats")}
    ${n?Nh(t):Q(ns(t),"Add a fat",()=>Hh(t,e.length))} ${Uv(t)}
  </section>`}function Wv(t,e,n){let o=`/fats/${e}`,i=qh(t,String(n[e].fat??""))||"Which fat?",s=xt(t,`${o}/fat`)??xt(t,o),l=a.picking?.of===t&&a.picking.row===e;return r`<li class="formula-row" id=${L(ns(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${N(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Fu():Hh(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${q(ns(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${l?Nh(t):u}
    ${ph(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Iv(n[e])}`,body:()=>Hv(t,e)})}
  </li>`}function Hh(t,e){h({picking:{of:t,row:e,text:""}}),Z(H("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Fu(){let t=a.picking;h({picking:void 0}),t&&Z(et(t.of,t.row<Qr(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Cu(t,e){let{row:n}=a.picking,o=Qr(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Xi(ns(t),`${qh(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],et(t,`/fats/${n}/share`))}function Nh(t){let{row:e,text:n}=a.picking,o=Qr(t).map(m=>m.fat),i=Bv(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),l=s.find(m=>m.id===a.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=l?s.indexOf(l)+m:m>0?0:s.length-1,$=s[(_+s.length)%s.length];$&&(h({picking:{of:t,row:e,text:n,lit:$.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${$.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Fu(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(v=>jt(v.name)===jt(n.trim())),$=l??(s.length===1?s[0]:_);m.key==="Enter"&&$&&Cu(t,$.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
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
      <button type="button" @click=${Fu}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,$=pn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[e]===m.id?"true":"false"}
          @click=${()=>Cu(t,m.id)}
        >
          ${m.name}${$===m.name||!$?"":`, ${$}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{Ev(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function Bv(t,e){let n=Fn(t).filter(l=>pn(l,e)!==void 0),o=e.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>pn(l,d)!==void 0).length,s=Math.max(...Fn(t).map(i));return s?Fn(t).filter(l=>i(l)===s):[]}async function Ev(t,e){if(!await pr(t))return;let o=e.trim(),i=Tr(o,[...a.fats,...lt("own_fats","/fats")]),s=lt("own_fats","/fats").length;U("own_fats",`/fats/${s}`,{...Wr,id:i,name:o}),Cu(t,i),Wt("own_fats",i),Z(et("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function Iv(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var jv=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],qv={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Hv(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,l=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${S({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:jv,puts:d=>qv[d],hint:Nv(t,O(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Mu(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Nv(t,e){let n=Fn(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function Uv(t){let e=Ni(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=O(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var zv=t=>pt.includes(t);function Gr(){let t=a.complaint;return!t?.field||t.lye_heavy?!1:Xo().some(({of:e,at:n})=>me(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function os(){let t=a.complaint?Xo():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>Jv(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function Jv({of:t,id:e,folds:n}){for(let o of n)it(o);h({has_asked:!0}),zv(t)?(a.view!=="formula"||a.formula_of!==t)&&Jt(t):a.view!=="set-up"&&!(t==="own_fats"&&a.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>Z(H(e)))}var Uh="danger-of-superfat";function Wu(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Cn(t).length?Uh:void 0})}
    </div>
    ${Qi(t,Uh)} ${Vv(t)} ${Xv(t,e)}
  </section>`}function Vv(t){let e=lt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${S({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Kv(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>Qv(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${Kr("The two",e.map(i=>i.share))}
        </p>`:u}`}function Kv(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function Qv(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),l=xt(t,i)??xt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${Gv(e.purity_range)}`,body:()=>Yv(t,i)})}
  </div>`}var Gv=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function Yv(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${S({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var Zv={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function Xv(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(Zv);return r`${S({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:ek(e)})}
    <div class="row">${n.map(s=>tk(t,s))}</div>`}function tk(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function ek(t){if(!(!t||a.is_old))return`It now makes a strength of ${R(t.lye_strength_percent,1)} %; ${R(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(t.water_percent_of_fats,1)} % of the fats.`}function En(t,e,n){let o=nk(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${ik(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${zh(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>sk(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function nk(t,e){let n=lt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Bu={name:"",share:""},ok={unsaid:void 0,one:"",many:[Bu]};function ik(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=l=>l==="many"&&o?[{...Bu,name:o}]:ok[l];return r`${S({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${zh(t,e,"INCI name","One more INCI name")}`:u}`}function sk(t,e,n){return S({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function zh(t,e,n,o,i){let s={of:t,at:e};return r`${k(s).map((l,d)=>r`<div class="row named" id=${L(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${q(s,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${Q(s,o,()=>I(s,Bu,n))}`}var rk=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:_k},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:ck},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:pk},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:mk}];function Eu(t){return rk.map(e=>{let n={of:t,at:`/${e.list}`},o=k(n),i=(s,l)=>r`<li class="formula-row" id=${L(n,l)}>
        ${lk(t,e,n,s,l)} ${e.row(t,`${n.at}/${l}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Q(n,e.add,()=>I(n,ak(e),e.add.replace("Add ","")))}
    </section>`})}function ak(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function lk(t,e,n,o,i){let s=`/${e.list}/${i}`,l=xt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:Vr(t,`${s}/rate`,"How much",Jr)}
      ${q(n,i,d)}
    </div>`}function Jh(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return S({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function Vh(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${Jh(t,e,dk,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?S({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:uk,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var uk=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],dk=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Iu(t,e,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Vr(t,`${e}/limit`,"The most that the supplier's document allows",jh,!0)}`})}function ju(t,e,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Eh(t,e)} ${o?Ou(t,e):u}`})}var Yr=(t,e,n)=>En(t,e,String(n.name||"it"));function ck(t,e,n){return r`${Vh(t,e,!0)}
    <div class="folds">${ju(t,e,n,!0)} ${Iu(t,e,n)} ${Yr(t,e,n)}</div>`}function Kh(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Vh(t,e,!1)})}function pk(t,e,n){return r`<div class="folds">
    ${Iu(t,e,n)} ${Yr(t,e,n)} ${Kh(t,e,n)} ${ju(t,e,n,!1)}
  </div>`}function mk(t,e,n){return r`${hk(t,e)}
    <div class="folds">
      ${Iu(t,e,n)} ${Yr(t,e,n)} ${Kh(t,e,n)} ${ju(t,e,n,!0)}
    </div>`}var fk=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function hk(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${S({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${$t({label:"Which oil",of:t,at:`${n}/fat`,answers:zr(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${S({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:fk,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var gk=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function _k(t,e,n){let o=(i,s,l)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:l});return r`${wk(t,e,n)}
    ${Jh(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${yk(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>$k(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Ou(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Yr(t,e,n)}
    </div>`}function $k(t,e){let n=g(t,e)===!0?"ice":"liquid";return S({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function wk(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...ut(t,e,["replaces","rate"]),[s]:""});return r`${S({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:bk,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Vr(t,`${e}/rate`,"Rate",Jr):u}`}var bk=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function yk(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${S({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Pu(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...zr(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${$t({label:"Built-in figures of",of:t,at:n,answers:gk.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var nt=()=>a.beside.studio!==void 0,is=({run:t})=>g("run",t),qu=({studio:t})=>g("studio",t);function ss(t){return is(t)===void 0&&nt()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var Ye=t=>is(t)??qu(t),At=(t,e)=>f({...e,...ss(t)}),Hu=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function rs(t,e=""){return t===void 0||Hu(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>rs(o,`${e}/${Y(n)}`))}function In(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))w(t,n)!==void 0&&Hu(w(t,n))&&(t=D(t,n,void 0));return t}var as=(t,e)=>e.reduce((n,o)=>In(D(n,o,void 0),o),t);function Gh(t){let e=new Map;return t.flatMap(n=>rs(is(n)).flatMap(([o,i])=>{let s=n.studio+o,l=e.get(s)??g("studio",s);return Hu(l)||String(l).startsWith("?")||l===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Nu(t){nt()||await cr();let e=Gh(t);Dn([["studio",n=>e.reduce((o,[,i,s])=>D(o,i,s),n)],["run",n=>as(n,e.map(([o])=>o))]]),j("Kept in the studio")}function vk(t){let e=t.flatMap(o=>rs(qu(o)).map(([i,s])=>[o.run+i,s]));Dn([["run",o=>e.reduce((i,[s,l])=>w(i,s)===void 0?D(i,s,l):i,o)]]),j("Said in this run only")}function kk(t){let e=t.flatMap(n=>rs(is(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Dn([["run",n=>as(n,e)]]),j("Taken from the studio again")}var Qh=t=>rs(t).length>0;function jn(t,e){if(!nt())return u;let n=e.some(s=>Qh(is(s))),o=e.some(s=>Qh(qu(s))),i=(s,l)=>r`<button type="button" aria-label="${t}: ${s}" @click=${l}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Gh(e).length?i("Keep in my studio",()=>{Nu(e)}):u}
    ${n&&o?i("As in the studio",()=>kk(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>vk(e)):u}
  </span>`}function Uu(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return e.find(o=>zt(o,n)===zt(t,n))??t}var ls=()=>Object.keys(g("studio","/cups")??{}),us=()=>ls().length===1?{net:""}:ls().length?{cup:"",net:""}:{holds:"",net:""},Yh="\0another";function ds(t,e="Cup holds"){let n=`${t}/holds`,o=ls();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?xk(t):u}`;let i=l=>l===Yh?B("run","Another cup",t,{...zu(t),holds:""},et("run",n)):B("run",`Cup: ${l}`,t,{...zu(t),cup:l}),s=l=>O("studio",`/cups/${Y(l)}`);return $t({label:"Which cup",at:`${t}/cup`,answers:[...o.map(l=>[l,`${l}, ${s(l)}`]),[Yh,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function zu(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var xk=t=>r`<button type="button" @click=${()=>B("run","A cup of the studio",t,zu(t))}>
    A cup of my studio
  </button>`;function Xh(){return nt()?r`<div class="row">
    ${ls().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${Y(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Tk()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Tk(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||Zh();e.value="",B("studio",`${n} added`,`/cups/${Y(n)}`,"",et("studio",`/cups/${Y(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Zh()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function Zh(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!ls().includes(e))return e}}var Rk=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Ju=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function Zr(t){let{run:e}=Ju(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${nt()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${jn("How warm",[Ju(t)])} ${E("run",e)} ${Sk(t)}`})}function Sk(t){let{run:e,studio:n}=Ju(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>At(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${$t({label:"The lye cools in",...ss(l),answers:Rk,unsaid:"not given",optional:!0})}
  </div>`}var ne=()=>w(a.run.now,"/pipe")!==void 0;function tg(){let t=e=>{let n=D(e,"/pipe",{formula:"",fills_headspace:"",whip:us()});return nt()?n:D(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};it("set-up pipe"),Se("run","Topping added",t,H("lane-pipe"))}function Ak(t){let e=Object.keys(w(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",w(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>w(o,i)===void 0?o:D(o,i,void 0),t)}function Dk(){Se("run","Topping removed",Ak,H("topping-back"))}function eg(){let t=a.past.at(-1)?.run?.now;return!t||w(t,"/pipe")===void 0||ne()?u:r`<button type="button" id="topping-back" @click=${Bi}>Bring the topping back</button>`}function Vu(){return r`${Wk()} ${Zr("pipe")}
    <p class="choice"><button type="button" @click=${Dk}>Take the topping away</button></p>`}var Pk=["trials","beads","envelope"];function Ku(t){return Pk.every(e=>g("run",`/pipe/${e}`)===void 0)&&ee("run","/pipe",`${N("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${E("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Ae({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:us()},body:Ok})}
      ${Ae({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Mk})}
    </div>
    ${Ae({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:lh,body:()=>uh(t)})}
    ${t?Ck(t):u}`}function Ok(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${L(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${q(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Q(t,"One more trial",()=>I(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${ds("/pipe/trials/weigh_cup")}
    </div>
    ${E("run","/pipe/trials/weigh_cup")}`}function Mk(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${S({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Fk={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Ck(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},l)=>M({key:`pipe.by.${i}`,label:Fk[i],note:o(l),shown:Rt(a.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${Lk(t)}`}function Lk(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=R(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&w(a.run.now,`${o}/correction`)!==e.correction,l=()=>B("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Qu(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${ds("/pipe/whip")}
    </div>
    ${E("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function Wk(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Ae({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Bk(t,{at:e,figure:n}){let o=w(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function cs(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,Bk(t,e))}>It is really so: keep it</button>`:u}var Yu=500,Ek=()=>w(a.run.now,"/cut")===void 0&&Ik()>=Yu,Ik=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Xr={run:"/cut/kerf",studio:"/kerf"};function ng(t){it("set-up cut"),B("run","Cut","/cut",{bar:Gu[t],...nt()?{}:{kerf:""}},et("run",`/cut/bar/${Object.keys(Gu[t])[0]}`))}function jk(){B("run","Left whole","/cut",void 0,H("cut-into-bars"))}function og(){return Ek()?r`<button type="button" id="cut-into-bars" @click=${()=>ng("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>ng("slab")}>Cut it into bars</button>`:u}var Gu={loaf:{thickness:""},slab:{length:"",width:""}};function qk(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var Hk={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function ig(){let t=qk(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return r` ${S({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Gu[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${At(Xr,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${jn("Kerf",[Xr])}</p>
    ${t?S({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Hk[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${jk}>Leave it whole</button>`}var ta=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function ea(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${F(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function Nk({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,d=l-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>T`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",ji(e,l))}${p("side",ji(t.loops))}
    </svg>
  </div>`}function oi(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${Nk(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${A(Rt(a.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${A(Rt(a.units,i.total_ml))} together`:u},
      ${A(kt(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${A(Rt(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(l=>r`<li>${l.text}</li>`)}
          </ul>`:u}`}var Uk={mm:"in",g:"oz","\xB0C":"\xB0F"},zk={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function na(t,e,n=""){let o=Zu(t);if(o)return o.unit??"";let i=Ne(w(W(),t));return zk[e]?.test(i)?i:n||(a.units==="us"?Uk[e]??e:e)}var oa=()=>h({typed:void 0}),ii=t=>`d${t.replaceAll("/","-")}`,Zu=t=>a.typed?.key===ii(t)?a.typed:void 0,ia=t=>Zu(t)?.text??String(w(W(),t)??"");function qn(t){let{complaint:e}=X();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function Xu(t,e,n,o){let{pointer:i}=t,s=l=>{let d=l.target.value,c=t.unit?na(i,t.unit,t.unit_before):"";h({typed:{key:ii(i),text:d,unit:c}}),yt(i,Jk(t,d,c))};return r`<input
    id=${ii(i)}
    .value=${F(ia(i))}
    @input=${s}
    @blur=${oa}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${qn(i)?"true":"false"}
  />`}function Jk(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Ue(e)?`${e.trim()} ${n}`:e}function oe(t,e){let n=ii(t.pointer),o=qn(t.pointer),i=Vk(t.pointer)??t.hint,s=t.unit?` (${na(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${Xu(t,o||i?`${n}-said`:void 0,e)}
    ${_t(n,o,i)}
  </div>`}function Vk(t){let e=w(W(),t),n=Zu(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function sa(t){let e=t.toLowerCase(),{file:n,shipped:o}=X().open,i=o?"":n;return a.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function ps(t){let{open:e}=X();try{if(await Be(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Ls()})}catch(n){if(!(n instanceof y))throw n;return lu(n)}a.run.file&&(ve(),at()),t(e.file)}var _n="/shape/points",sg=500,Hn=(t,e)=>[_n,t,...e?[e]:[]].join("/"),rg=t=>Array.from({length:t.least},()=>({}));function ag(t){let e=Yt(W(),_n),n=Qk(),{complaint:o}=X(),i=o?.field===_n&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${na(Hn(-1,s.name),s.unit,lg(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,l)=>Kk(t,l,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=sg} @click=${()=>aa(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function Kk(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=Gk(e),s=l=>{let{name:d,label:c,unit:p}=t.columns[l],m={label:c,pointer:Hn(e,d),unit:p,unit_before:lg(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return Xu(m,i?`point-${e}-said`:void 0,Yk(t,e,l),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>aa(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>ug(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function Qk(){let t=[...Ai(W()),...Ks(W())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function Gk(t){let{complaint:e}=X();return qn(Hn(t))??(e?.about===Hn(t)?e.line:void 0)}function lg(t,e,n){let o=(i,s)=>Ne(w(W(),Hn(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function ra(t,e){queueMicrotask(()=>document.getElementById(ii(Hn(t,e)))?.focus())}function aa(t,e){let n=[...Yt(W(),_n)];n.length>=sg||(n.splice(e,0,{}),oa(),yt(_n,n),ra(e,t.columns[0].name))}function ug(t,e,n=0){let o=Yt(W(),_n).filter((i,s)=>s!==e);oa(),yt(_n,o.length?o:[{}]),ra(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function Yk(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let l=!ia(Hn(e,o))&&!ia(Hn(e,i));if(s.key==="Enter"&&s.shiftKey)aa(t,e+1);else if(s.key==="Enter"&&n===0)ra(e,i);else if(s.key==="Enter"&&e+1<Yt(W(),_n).length)ra(e+1,o);else if(s.key==="Enter")aa(t,e+1);else if(s.key==="Backspace"&&l&&Yt(W(),_n).length>1)ug(t,e,e>0?1:0);else return;s.preventDefault()}}var td={weighings:[""]},ed=/\.(3mf|gltf|glb)$/i;function la(t){let e=kn(t);return e?{kind:t,points:rg(e)}:{kind:t}}var Zk=()=>yt("/water",td),Ze=t=>$e(W(),t),ms=()=>Si(W());function dg(t){let{open:e,answer:n,is_old:o}=X();return r`${Ve(e,()=>{ps(t)})} ${Ke(e)}
    ${e.shipped?u:ni(a.files?.moulds.find(i=>i.file===e.file))}
    ${Ze("shape")&&Ze("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Ze("shape")?st("Shape",ms(),Object.entries(Pp),Xk):u}
    <div class="beside ${kn(ms())?"rows":""}">
      <div>
        ${nd()} ${Ze("shape")?ex():u} ${Ze("mesh")?nx():u}
        ${od()} ${Ze("water")?ix():u} ${rx()}
      </div>
      <div class="stays">${oi(n,o,pg())} ${ax(t)}</div>
    </div>`}function Xk(t){let e={...X().shapes,[ms()]:W().shape};b(X(),{shapes:e,answer:void 0}),yt("/shape",e[t]??la(t))}function tx(){let{shipped:t,file:e}=X().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function nd(){let t=tx();return oe({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function ex(){let t=ms(),e=kn(t);return r`${Do(t).length?r`<div class="row">
          ${Do(t).map(n=>oe({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?ag(e):u}`}function od(t=pl(W())){return r`<div class="row">
      ${t?u:oe({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${oe({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${oe({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${oe({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var id=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],sd=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function nx(){let t=o=>String(w(W(),`/mesh/${o}`)??""),e=(o,i,s)=>{let l=qn(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${st(o,t(i),s,d=>yt(`/mesh/${i}`,d||void 0))}
      ${l?r`<p class="complaint">${l}</p>`:u}`},n=qn("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${ed.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",id)} ${e("Which way is up","up",sd)}
    ${t("role")==="body"?ox():u}
    <div class="row">
      ${oe({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${oe({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function ox(){let t=w(W(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${st("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>yt("/mesh/on_board",e==="yes"?!0:void 0))}`}function ix(){let t=w(W(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":w(t,"/depth")!==void 0?"depth":"below_brim",n=s=>yt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=w(W(),"/water/weighed_in"),i=e===void 0||e==="brim"?qn("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${oe({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${st("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?oe({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?oe({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${st("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>yt("/water/weighed_in",s))}
    <div class="row">
      ${Yt(W(),"/water/weighings").map((s,l)=>oe({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},sx(l)))}
    </div>
    ${X().complaint?.field==="/water/weighings"?r`<p class="complaint">${X().complaint.line}</p>`:u}
    <button type="button" @click=${cg}>One more round</button>`}function cg(){let t=Yt(W(),"/water/weighings").length;yt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var sx=t=>e=>{e.key==="Enter"&&(t+1===Yt(W(),"/water/weighings").length?cg():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function rx(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${Ze("shape")?u:t("Add measures, as a check",()=>yt("/shape",la("block")))}
    ${Ze("shape")&&Ze("mesh")?t("Leave the measures out",()=>yt("/shape",void 0)):u}
    ${Ze("water")?t("Leave the water out",()=>yt("/water",void 0)):t("Add weighed water",Zk)}
  </div>`}function pg(){let t=Ks(W()).length;return t?[...Di(W()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Di(W())}function ax(t){let e=String(W().name??"").trim(),n=sa(e),{open:o,answer:i,is_old:s,complaint:l}=X(),d=i&&!s&&!l&&!pg().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ps(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${rd(e,n)}
    ${l?r`<p class="alarm" role="status">${lx(l.field)}${l.line}</p>
            ${cs(W(),l.keep,yt)}`:u}`}var rd=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function lx(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Do(ms()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var ux=200*2**20;async function mg(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),yt("/name",t.name.replace(/\.\w+$/,"")),t.size>ux){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return b(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Kc(t,o=>b(e,{share:o}));b(e,{share:1,upload:n.file}),await hg(e)}catch(n){b(e,{complaint:n instanceof y?n.message:String(n)})}}async function hg(t){let e=t.questions+1;b(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let l=await Vo({file:n,unit:o,role:i,up:s});e===t.questions&&b(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(e!==t.questions)return;let d=o?t.sizes:mx(l.complaint),c=d.length&&!o?void 0:J(l.complaint);b(t,{sizes:d,complaint:c,is_measuring:!1})}}async function dx(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await Nc({file:n,unit:o,up:i});e===t.questions&&b(t,{inspection:s})}catch(s){if(!(s instanceof y))throw s;e===t.questions&&b(t,{complaint:J(s.complaint)})}}function cx(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(px)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{dx(t)}}>List every defect of the mesh</button>`}var px=({text:t})=>r`<li>${t}</li>`;function mx({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function ad(t,e){b(t,e),hg(t)}function gg(t,e){let n=l=>{let d=l.target;mg(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),mg(l.dataTransfer?.files[0])},[i,s]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${a.mesh?fx(a.mesh,t,e):u}`}function fx(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,l])=>[s,l?`${s}: ${l} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!ed.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${st("Unit of the file's numbers",t.unit,i,s=>ad(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?cx(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${st("Role",t.role??t.answer?.gauge.role,id,s=>ad(t,{role:s}))}
            <h4>Which way is up</h4>
            ${st("Up",t.up??"",sd,s=>ad(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${oi(t.answer)} ${hx(t,e,n)}`:u}`}var _g=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function hx(t,e,n){let o=String(W().name??"").trim(),i=sa(o),s=o&&!i&&!t.is_keeping;return r`${nd()} ${od(_g(t))} ${rd(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>fg(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>fg(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function fg(t,e,n){b(t,{is_keeping:!0});try{let o=gx(t,await Qc(t.upload,$x(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await _x(o))return e(o);Qo(o,"mesh",X().title),await ps(n),b(t,{complaint:a.mould?.complaint?.line})}catch(o){b(t,{complaint:o instanceof y?o.message:String(o)})}b(t,{is_keeping:!1})}function gx(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=W();return{...i,..._g(t)||o===void 0?{}:{cavities:o},mesh:n}}async function _x(t){try{return await yn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof y&&e.status===422)return!1;throw e}}var $x=t=>Po(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var ua={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},$g={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function wg(t){qe();let e={...$g,shape:la("block")};t==="mesh"?Qo($g,"mesh",ua[t]):Qo(t==="water"?{...e,water:td}:e,"form",ua[t]),ca()}async function bg(t,e){qe(),await vf(t,e),ca()}async function da(t){qe(),await kf(t),ca()}function wx(t){Qo(t,"form","More about this mould"),ca()}function ca(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function yg(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?gg(t,wx):dg(t)}
  </section>`}var ld=()=>h({chosen_mould:void 0});function fs(t,e){let n=a.files?.moulds.find(s=>s.file===t),o=a.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};h({chosen_mould:i}),bx(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function bx(t){try{b(t,{answer:await Vo({file:t.file})})}catch(e){b(t,{complaint:e instanceof y?e.message:String(e)})}}var yx=t=>a.files?.moulds.find(e=>e.file===t);function vg(t,e){let n=()=>e(async()=>{await bg(t.file,t.shipped),ld()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Ir(yx(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?oi(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:xx(t,e)}
    </div>
  </section>`}var kg=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=Yu;function vx(t){let e=kg(t)?t.slice.trim():"";return Ue(e)?`${e} mm`:e||void 0}var kx=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${F(t.slice)}
      @input=${e=>b(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function xx(t,e){let n=ta(t.sell),o=vx(t),i=s=>()=>e(()=>wr({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${ea("mould-sell",t.sell,s=>b(t,{sell:s}))}
      ${kg(t)?kx(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function hs(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:l}=a;if(t!=="reading")return nn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&l?{name:"chosen",file:l.file,of:l}:t==="order"?{name:t,file:n?.open.file,of:n}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:yi[o],file:e.file,of:e}}async function Tg({name:t,file:e}){if(!(!(t===yi.apart&&a.formulas.apart?.file===e)&&!await br()))try{await Tx(t,e)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Tx(t,e=""){let n=t;if(nn(n))return xg(e,n);let o=["pour","pipe"].find(i=>yi[i]===t);if(o){await xg(e,"formula"),a.view==="formula"&&Jt(o);return}if(t===yi.apart)return Vi(e);if(t==="order")return Ki(e);await Rx(t,e)}async function xg(t,e){t===a.run.file||!t?h({view:a.run.file?e:"runs",typed:void 0}):await je(t,e)}async function Rx(t,e){let n=t;ld(),qe(),h({view:ae(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=nr(Ut).find(i=>i.id===e);t==="describing"&&o&&await da(o),t==="chosen"&&fs(e),Sx()}async function Sx(){try{await de(),gr()}catch(t){if(!(t instanceof y))throw t;h({list_complaint:t.message})}}var ie={id:""},Et,ud=!1,cd=new Map,pa=JSON.parse(sessionStorage.getItem("left")??"{}");function Sg(){let t=hs();ud||!t||Et&&Ce(Et)===Ce(t)||(ma(),Ag(t))}function Ag(t){let e=!Et||Et.name===t.name&&Et.of!==void 0&&Et.of===t.of;if(Et=t,e)return si();ie={id:crypto.randomUUID(),before:location.hash},cd.set(ie.id,t.of),history.pushState(ie,"",Ce(t)),requestAnimationFrame(Dx)}function si(){Et&&(ie.id||(ie={id:crypto.randomUUID()}),cd.set(ie.id,Et.of),history.replaceState(ie,"",Ce(Et)))}var Ax="button, input, select, summary, a[href], [tabindex]",dd=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Dg=t=>[...document.querySelectorAll(`#main :is(${Ax})`)].filter(e=>dd(e)===t);function ma(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?pa[ie.id]={scroll:scrollY}:pa[ie.id]={scroll:scrollY,words:dd(t),nth:Dg(dd(t)).indexOf(t)}}function Dx(){scrollTo(0,0),document.activeElement?.closest("#main")||Pg()}function Pg(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Og(){let{scroll:t,words:e,nth:n=0}=pa[ie.id]??{scroll:0},o=e===void 0?void 0:Dg(e)[n];o?o.focus({preventScroll:!0}):Pg(),scrollTo(0,t)}var $n=t=>Mg({name:t,file:nn(t)?a.run.file:void 0});async function Mg(t){ma(),await pd(t,()=>{let e=hs();e&&!(Et&&Ce(Et)===Ce(e))&&Ag(e)})}async function pd(t,e){ud=!0;try{await Tg(t)}finally{ud=!1,e()}}function Fg(t){ie.before===Ce(t)?history.back():Mg(t)}var Rg=Promise.resolve();function Px(t,e){ma();let n=()=>history.state?.id!==t?.id;Rg=Rg.then(async()=>{if(!e)return si();if(n())return;let o=t?cd.get(t.id):void 0,i=[a.run,a.formulas.apart,a.order].find(s=>s&&s===o);await pd(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{Et=hs(),!n()&&(ie=t??{id:crypto.randomUUID()},si(),requestAnimationFrame(Og))})})}function Cg(){history.scrollRestoration="manual",addEventListener("popstate",t=>{Dc()||Px(t.state,Za(location.hash))}),addEventListener("pagehide",()=>{ma(),sessionStorage.setItem("left",JSON.stringify(pa))})}async function Lg(){let t=Za(location.hash);t&&(ie=history.state??{id:""}),await hf(Zc(t)),t&&Ox(t)&&await pd(t,()=>{Et=hs(),si(),requestAnimationFrame(Og)}),await gf()}var Ox=t=>!Et||Ce(Et)===Ce(t);function ri(t=a.plan?"The figures below are out of date.":"No figures yet."){let e=Gr()?void 0:a.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${wn(e.field)}${J(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${fd}>Ask again</button>`:u}
              ${me("run")?cs(a.run.now,e.keep,(n,o)=>U("run",n,o)):md(e)}
              ${Mx()?r`<button type="button" @click=${hd}>Go to the field</button>`:u}`:u}
    </div>
    ${os()}`}function md({keep:t}){let{studio:e}=a.beside;return e&&me("studio")?cs(e.now,t,(n,o)=>U("studio",n,o)):u}function wn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function fd(){at(),a.run.failed&&Ee()}function Mx(){if(Wg())return!0;let t=ze();return t?document.activeElement!==t:Fx()}var Fx=()=>a.view!=="set-up"&&me("run")&&a.complaint!==void 0&&a.complaint.field!=="",Wg=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&me(t));function hd(){let t=ze(),e=Wg();if(t)return qt(t);e?Jt(e):$n("set-up"),Cx(()=>qt(ze()))}function Cx(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Bg=()=>[...tr().map(t=>Ve(t)),...Xs().map(Ke)];function Eg(){let t=a.formula_of,e=a.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Bg()}${ri()}
      <p>Reading the formula ...</p>
      ${_d(t)}`;let n=a.plan&&ei(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Bg()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Lx(t)}</p>
    <div class="choice">${_d(t)}${t==="apart"?Wx():u}</div>
    ${ni(a.files?.formulas.find(i=>i.file===e.file))} ${Bx(t,o,n)} ${jg(t)}
    ${Lu(t)} ${Wu(t,o)} ${Eu(t)} ${Du(t)}
    <div class="choice">${_d(t)}</div>`}var Ig=t=>[jg(t),Lu(t),Wu(t,void 0),Eu(t),Du(t)],gd=()=>String(a.run.now.name??a.run.file);function Lx(t){let e=a.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${gd()}".${n}`:o?`Base and topping of "${gd()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${gd()}".${n}`}function _d(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Fg(e?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function Wx(){return r`<button type="button" @click=${()=>{nu("pour")}}>Use it as the base</button> ${ne()?r`<button type="button" @click=${()=>{nu("pipe")}}>Use it as the topping</button>`:u}`}function Bx(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...Ex(t,n),...Ix(t,e)].map(([o,i,s])=>r`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${s?Bn(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${jx(t)}
  </section>`}function Ex(t,e){let n=t==="pipe"?ku(e,e.whippings[0]):"";return n?[["For one whipping",n]]:Bt(e.whole)?[["For one batch",Qe(e.whole,e.batch)]]:[]}function Ix(t,e){let n=Cn(t).length?" \u26A0":"";return[["Fats",A(C(a.units,e.fats_g))],["Superfat as weighed",`${ce(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Ur(e).map(({one:o})=>[o.name,A(bo(a.units,o))])]}function jx(t){let e=Gr()?void 0:a.complaint;if(!e)return r`<div role="status"></div>
      ${os()}`;let n=me(t),o=n&&e.field!==""&&document.activeElement!==ze();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${wn(e.field)}${J(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${fd}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>ze()?.focus()}>Go to the field</button>`:u}
    </div>
    ${os()}`}function jg(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var $d=t=>b(a.new_formula,t);function qg(){let{name:t,copied:e}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>rt(async()=>{await i(t.trim()),$d({name:"",copied:""})});return r`${he("Formulas")}
    <section aria-label="Formulas">
      ${Pe(n,qx)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${F(t)}
            @input=${i=>$d({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o($f)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>$d({copied:i.target.value})}
          >
            <option value="" .selected=${F(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${F(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>wf(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${ge("formula")}`}function qx(t){let e=t.changed?[`changed ${gt(t.changed)}`]:[];return Ge({kind:Oo,one:t,facts:e,open:()=>Vi(t.file)})}function Hx(t){qe(),fs(t,`Saved in ${t}.`)}function Hg(){let{chosen_mould:t}=a;return r`${he("Moulds")}
  ${t?vg(t,rt):yg(Hx)??r`${Jx()} ${Nx()}`}`}function Nx(){let t=(a.files?.moulds??[]).filter(n=>!n.shipped),e=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Pe([...t,...e],Ux)} ${ge("mould")}
  </section>`}function Ux(t){let e=t.shipped?zx(t.file):Qx(t.file),n=()=>Promise.resolve(fs(t.file));return Ge({kind:Ut,one:t,facts:e,picture:t.file,open:n})}var zx=t=>a.catalogue.filter(e=>e.path===t).map(e=>`${A(Rt(a.units,e.brimful_ml))}, ${z(e.cavities,"cavity","cavities")}; ${e.description}`);function Jx(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${Vx()}
    <div class="choice">
      ${Object.entries(ua).map(([t,e])=>r`<button type="button" @click=${()=>wg(t)}>${e}</button>`)}
    </div>
  </section>`}function Vx(){return nr(Ut).map(t=>{let e=String(ht(t.text)?.name??"").trim()||Kx(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>rt(()=>da(t))}>Continue</button>
        <button type="button" @click=${()=>{Tn(Ut,t.id),V()}}>Discard it</button>
      </div>
    </div>`})}var Kx=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function Qx(t){let e=Zm(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[A(Rt(a.units,e.brimful_ml)),z(e.cavities,"cavity","cavities")]:["measuring ..."]}var Gx=300,Yx=1e3;function fa(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=a,i=t?.of===e&&t?.wish===n;!i&&!o&&Zx();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function bd(){a.quoted&&h({quoted:{...a.quoted,of:void 0}})}var gs,wd=!1;function Zx(){let{plan:t,quote_wish:e}=a;wd||gs?.of===t&&gs?.wish===e||(window.clearTimeout(gs?.timer),gs={of:t,wish:e,timer:window.setTimeout(()=>{tT()},a.quoted?Gx:0)})}var ha=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Ng(t,{numbers:e="",by:n,figure:o}){let i=ha(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var ga=()=>Ng({file:a.run.file,run:a.run.now},a.quote_wish);function Xx(t,{numbers:e=""}){return t.field==="/sell"&&ha(e)?{...t,file:"",field:"sell"}:t}async function tT(){gs=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=a;if(!(!e||!n||i)){wd=!0;try{let s=await jc(Ng(n,o));t===a.run&&h({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof y))throw s;if(t!==a.run)return;let l=Xx(s.complaint,o);h({quoted:{of:e,wish:o,quote:a.quoted?.quote,complaint:l}}),s.may_pass&&window.setTimeout(bd,Yx)}finally{wd=!1}}}var eT=300,nT=1e3,vd=t=>{let{by:e,figure:n}=a.quote_wish;return[t.open.now,t.open.file,t.times,e,n,a.plan,uo()]},Ug=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function zg(){let t=Ft(),{quoted:e}=t;if(!dn(t.open.now)||t.open.theirs)return{is_old:!0};let n=Ug(e?.of,vd(t));!n&&!a.is_old&&oT(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function kd(){let{quoted:t}=Ft();t&&b(Ft(),{quoted:{...t,of:[]}})}function xd({open:t,times:e}){let{by:n,figure:o}=a.quote_wish,i=ha(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var _a,yd=!1;function oT(t){let e=vd(t);yd||Ug(_a?.of,e)||(window.clearTimeout(_a?.timer),_a={of:e,timer:window.setTimeout(()=>{iT(t)},t.quoted?eT:0)})}async function iT(t){if(_a=void 0,t===a.order){yd=!0;try{if(await Ie(),await ln(),await Wo(),!dn(t.open.now))return;let e=vd(t);await sT(t,e)}catch(e){if(!(e instanceof y))throw e}finally{yd=!1,b(t,{})}}}async function sT(t,e){try{b(t,{quoted:{of:e,quote:await qc(xd(t))}})}catch(n){if(!(n instanceof y))throw n;b(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===a.order&&kd(),nT)}}var ai={of:"order",at:"/lines",in_order:!0,stays:!0};function Jg(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${f({of:"order",label:"For",at:"/for",optional:!0})}
      ${f({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${f({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${E("order","/lines")} ${k(ai).map((t,e)=>rT(e))} ${aT()}
  </section>`}var Vg=()=>(a.files?.runs??[]).filter(({shipped:t})=>!t);function Kg(t){let e=rn(Ft().open.file,t);return a.files?.runs.find(n=>n.file===e)}var Qg=t=>Kg(t)?.name||t;function Gg(t){let e=Sn(Ft().open.now).map(({run:n})=>n);return Vg().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function rT(t){let{run:e}=Sn(Ft().open.now)[t]??{run:""},n=`/lines/${t}`,o=Kg(e)?.pieces,i=e?Qg(e):`line ${t+1}`;return r`<div class="row" id=${L(ai,t)} role="group" aria-label=${i}>
    ${$t({of:"order",label:"Run",at:`${n}/run`,answers:Gg(e),unsaid:"choose ..."})}
    ${f({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${z(o,"piece")}`})}
    ${k(ai).length>1?f({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${q(ai,t,i)}
  </div>`}function aT(){let t=Gg();return Vg().length?t.length?r`<div class="row">
    ${$t({of:"order",label:k(ai).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&I(ai,{run:e},Qg(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var lT=300,uT=1e3,Yg=()=>new Date().toDateString(),dT=()=>({file:a.run.file,run:a.run.now});function cT(){let{run:t,plan:e}=a;return{known:a.run_days,rests_on:()=>[a.plan,Yg()],is_ready:e!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??dT(),is_open:()=>t===a.run,keep:n=>h({run_days:n})}}function pT(){let{order:t}=a;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,a.plan,uo(),Yg()],is_ready:dn(e.now)&&!e.theirs&&!a.is_old,written:async()=>{await Ie(),await ln(),await Wo()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===a.order,keep:n=>b(t,{days:n})}}var $a=t=>t==="run"?cT():pT(),Zg=t=>$a(t).question(),Xg=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function wa(t){let e=$a(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=Xg(n?.of,e.rests_on());!i&&o&&mT(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Sd(t){let e=$a(t);e?.known&&e.keep({...e.known,of:[]})}var Td=new Map,Rd=new Set;function mT(t,e){let n=e.rests_on(),o=Td.get(t);Rd.has(t)||Xg(o?.of,n)||(window.clearTimeout(o?.timer),Td.set(t,{of:n,timer:window.setTimeout(()=>{fT(t)},e.known?lT:0)}))}async function fT(t){Td.delete(t);let e=$a(t);if(e?.is_ready){Rd.add(t);try{await e.written(),await hT(t,e)}catch(n){if(!(n instanceof y))throw n}finally{Rd.delete(t),h({})}}}async function hT(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let l=n();try{let d=await Hc(o());i()&&s({of:l,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;s({of:l,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Sd(t),uT)}}var Md=864e5,Nn=t=>Math.round(Date.parse(`${t}T00:00Z`)/Md),t_=t=>new Date(t*Md).toISOString().slice(0,10),gT=t=>new Date(t*Md).getUTCDay()===1,Dd=40,Pd=18,_T=7,Od=class{#n;#t;constructor({calendar:e}){this.#n=Nn(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(Nn(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(gT);return e.filter((n,o)=>o%Math.ceil(e.length/_T)===0).map(t_)}is_at_end=e=>Nn(e)-this.#n>.88*this.#t};function e_(t){let e=new Od(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${St(n[0].day)} to ${St(n.at(-1).day)}</p>
    ${Ad(t,e,20,yT(e))}
    <p>Hours of your making days</p>
    ${Ad(t,e,Dd+2,vT(t,e))}
    ${t.batches.map(o=>r`<p>${RT(t,o)}</p>
          ${Ad(t,e,Pd+6,kT(t,e,o))}`)}
    <figcaption>${AT(t)}</figcaption>
  </figure>`}var Ad=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${T`${$T} ${bT(t,e)}
      ${e.mondays().map(i=>T`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${wT(t).map(i=>T`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,$T=T`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,wT=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),bT=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>T`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),yT=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>T`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${Vf(e)}</text>`);function vT({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,l)=>{let d=Dd*l/n;return T`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Dd-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:l})=>T`${o("free",i,s)} ${o("used",i,l)}`)}function kT(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,l=(p,m,_)=>{let $=Nn(_)-Nn(m);return T`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide($)} height=${Pd} />`},d=o===i,c=(p,m)=>TT(t,p,n).map(_=>T`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Pd/2} r=${m} />`);return T`${l("mould",o,d?t_(Nn(o)+1):i)}
    ${Nn(i)<Nn(s)?l("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var xT=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),TT=({days:t},e,n)=>t.filter(({acts:o})=>o.some(i=>i.act===e&&xT(i,n))).map(({day:o})=>o);function RT({asked:t,batches:e},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var ST=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,_s=t=>T`<rect class=${t} x="1" y="1" width="24" height="18" />`;function AT({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:l})=>l===i));return[[!0,_s("used"),"hours used"],[!0,_s("free"),"hours free"],[!0,_s("mould"),"in the mould"],[!0,_s("cure"),"curing"],[t.some(({off:i})=>i),_s("off"),"day off"],[n("cast"),T`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),T`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out and set to chill"],[!0,T`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>ST(i,s))}var yo=t=>b(a.printing,t);function n_(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function o_(t){if(!a.printing.is_working){yo({is_working:!0,told:"Making it ...",on:a.view});try{await DT(),yo({told:await t()})}catch(e){yo({told:e instanceof Error?e.message:String(e)})}yo({is_working:!1})}}async function DT(){await Ie(),await ln();let t=a.view==="order"?a.order?.open:void 0,e=an("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var Un=()=>a.printing.on===a.view?a.printing.told:"",Vt=(t,e)=>()=>o_(async()=>{let n=URL.createObjectURL(await Fe(e));return n_(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),PT=t=>()=>o_(async()=>(n_(await Vc(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),OT=t=>{yo({paper:t}),localStorage.setItem("paper",t)},ba=()=>st("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],OT),Ht=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,Xe=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${Ht(`${t}, to print`,PT({kind:e,...o}),s,i)}
  ${a.files?.makes_pdf?Ht(`${t}, PDF`,Vt(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,zn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var tn={run:"/money/currency",studio:"/currency"},ya={run:"/money/prices",studio:"/prices"},Oe=()=>Ye(tn)!==void 0;function li(){let[t,e]=[g("run",tn.run),g("studio",tn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[tn,ya]}var va=()=>O("studio",tn.studio)||String(Ye(tn)??"");async function i_(t,e=""){if(t==="run"||!a.order)return;let{open:n}=a.order,o=Sn(n.now).map(({run:s})=>rn(n.file,s)),i=o.find(s=>ka(s,e))??o[0];(!o.includes(a.run.file)||o.some(s=>ka(s,e)))&&await je(i,"set-up")}var ka=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),s_=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function $s(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(N(t,n));if(o)return o}}var r_=(t,e)=>{it("set-up studio"),Wt("studio",t),$n("set-up"),s_(()=>qt($s("studio",e)))};async function a_(t){await i_(t),nt()||await cr(),r_("days","/days/making/monday")}var MT=["order","run","pour","pipe","studio"];async function Fd(t,{file:e,field:n}){if(t==="order"&&ka(a.order.open.file,e))return qt($s("order",n));await i_(t,e);let o=MT.find(i=>ka(An(i)?.file??"",e));if(o==="pour"||o==="pipe")Jt(o);else{if(o==="studio")return r_(n.startsWith("/work")&&Oe()?"money work":"days",n);if($s("run",n))return qt($s("run",n));$n("set-up")}s_(()=>qt($s(o??"run",n)))}function xa(t){let{days:e,complaint:n,is_old:o}=wa(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?FT(t,n):u}
    ${e?r`<div class=${o?"old":""}>${CT(t,e)}</div>
            ${UT(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function FT(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${J(e)}</p>
      <button type="button" @click=${()=>Sd(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!nt()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{a_(t)}}>To my making days</button>`:["/work","/work/each_batch"].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Fd(t,{...e,field:"/work/each_batch"})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${wn(n)}${Gi(J(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Fd(t,e)}}>Go to the field</button>`:u}`}var CT=(t,e)=>r`${LT(t,e)} ${e_(e)} ${ET(t,e)} ${qT(e)} ${HT(e)} ${NT(e)}`,Cd=(t,e,n)=>r`<small>${t?e:n}</small>`;function LT(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${St(s)}, promise it for <b>${St(o)}</b>.
        ${Cd(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>qt(document.getElementById(N(t,"/due")))}>
        Give it a due day
      </button>`:n?WT(e):BT(e)}function WT({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:l,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${St(e)}</b> at the latest to have ${z(l,"piece")} by
      <b>${St(s)}</b>.
      ${Cd(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${St(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${St(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function BT({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:l})=>i?r`${i} of ${z(o,"piece")} by ${St(s)}, the rest on <b>${St(l)}</b>.`:r`none of the ${z(o,"piece")} by ${St(s)}, all of them on <b>${St(l)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Cd(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var ET=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${St(n.day)} <small>${IT(n)}</small></h3>
            <ul>
              ${n.acts.map(jT)}
            </ul>
          </li>`)}
    </ol>
  </details>`,IT=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${Dr(e)} of ${Dr(t)}`:"",jT=({text:t,min:e,caution:n})=>r`<li>
    ${Gi(t)}${e?r` <small>${Dr(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function qT({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:l})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${St(i)} at the latest`:`ready by ${St(s)}`,l?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function HT({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${z(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function NT({notes:t}){let e=({severity:n,text:o})=>n==="note"?r`<p>${Gi(o)}</p>`:r`<p class="minded"><strong>Caution</strong> ${Gi(o)}</p>`;return t.length?r`<h3>To mind</h3>
        ${t.map(e)}`:u}function UT(t,e){let n=Zg(t),o=zn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Ht("Calendar file (.ics)",Vt(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${Xe({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${Ht("Table of the days (.csv)",Vt(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${Un()}</p>
  </section>`}var vo=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,ws=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function bs(t,e,n,o){let i=`quote ${e}`,s=a.open.has(i),l=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?l:u}
    @click=${()=>It("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${vo(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${l}>${t.map(o)}</td>
        </tr>`:u}`}var ys=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Ta({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}var Ra=(t,{items:e},n)=>ys(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:l})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),Sa=(t,e)=>bs(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${zT(e(n),n.cash)} ${JT(n.cash)}`),zT=(t,e)=>r`${ys(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:l})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,JT=t=>ys("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function vs(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var l_=t=>`${R(t,1)} %`;function VT(t){return"margin_percent"in t?`margin ${R(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${R(t.markup_percent,2)} %`:"price as set"}var Ld=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Aa(t,e,{way:n,by:o,ask:i,with_tax:s},l,d=u){let c=i===s,p=vo(t),m=$=>Ld(n,$),_=($,v)=>l?r`${v} ${Bn($)}`:v;return r`<tbody>
    ${ws(r`<span class="way">${n}</span>, ${VT(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Wd),"ask")}
    ${e?p("tax in it",m(({tax:$})=>c?$:"none")):u}
    ${p("fees",m(({fees:$})=>$))}
    ${p("left for you",m(({profit:$})=>$))}
    ${p(_("margin","margin, of the price"),m($=>l_($.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m($=>l_($.markup_percent)))}
  </tbody>`}var Wd=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Da(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return vs(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Bd=t=>t===1?"once":`${t} times`;function u_({times:t,currency:e,has_tax:n},o){let i=vo(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Bd(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${ws("It costs",t)} ${t[0].lines.map((s,l)=>KT(t,l))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Sa(t,s=>`made ${Bd(s.times)}`)}
        </tbody>
        ${vs(t).map((s,l)=>Aa(t,n,s,l===0,YT(t,s.way)))}
      </table>
    </div>`}var Ed=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,KT=(t,e)=>bs(t,Ed(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${QT(n[e])} ${n[e].parts.map(({part:o})=>GT(n[e],o))}`),QT=t=>ys(`A piece of ${Ed(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Ta(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),GT=(t,e)=>Ra(`${e} of all of them, ${Ed(t)}`,t,e),YT=(t,e)=>t[0].lines.map(({run:n},o)=>vo(t)(`${n??""}, a piece`,({lines:i})=>Ld(e,Wd)(i[o]))),d_=({times:t})=>Da(t,e=>`the order loses money, made ${e.map(n=>Bd(n.times)).join(", ")}.`);function c_({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(l=>`${i??""}: ${l}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${ke}</strong> ${o}</p>`)}
  </div>`:u}function p_({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${gn(s.lines.map(l=>o[l].run??""))} from one base,
            "${s.formula}", ${A(C(a.units,s.make_g))} in
            ${z(s.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function ZT(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===a.printing.way)?.way}function Pa({file:t,question:e,prices:n,is_old:o}){let i=zn(t),s=ZT(n),l={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${st("The price that is offered",s,d,p=>b(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?Xe({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!s}):u}
      ${Xe({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${a.files?.studios.length?r`${Xe({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Ht("Shopping list, table",Vt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${Un()}</p>
  </section>`}var Id=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await XT(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";le(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function XT(t){try{return[URL.createObjectURL(await Fe({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof y))throw e;return["",e.message]}}customElements.define("cost-picture",Id);function m_(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Pt:ga()}
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
          ${t0(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function t0({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var f_=({sell:t})=>`${t} to sell`;function h_({numbers:t,currency:e,has_tax:n},o){let i=vo(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(s=>r`<th scope="col"><b>${s.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",s=>s.make)} ${i("fillings",s=>s.fillings)}
          ${i("batches",s=>s.batches)}
          ${t.some(s=>s.to_stock)?i("beyond those, at no cost",s=>s.to_stock):u}
        </tbody>
        <tbody>
          ${ws("A piece costs",t)} ${e0(t).map(s=>n0(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Sa(t,f_)}
        </tbody>
        ${vs(t).map((s,l)=>Aa(t,n,s,l===0))}
      </table>
    </div>`}var e0=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],n0=(t,e)=>bs(t,e,n=>Ta(n,e),n=>Ra(`${e} of the whole run, ${f_(n)}`,n,e)),g_=({numbers:t})=>Da(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function __(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Oe()?i0():o0()}
  </section>`}var o0=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>jd()}>To the prices paid</button>`;function jd(t,e="lane-studio"){it("set-up studio"),t&&Wt("studio",t),$n("set-up"),requestAnimationFrame(()=>Z(H(e)))}function i0(){let{quote:t,complaint:e,is_old:n}=fa();return r`${t?r`${s0(t)} ${g_(t)}`:u}
    <div class="row">${l0(e)}</div>
    ${qd()?u:Hd(t?.currency,e)} ${e?a0(e):u}
    ${t?p0(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function s0({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${ke}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var r0=["sell","margin","markup","price"],ui=(t,e)=>t?.file===""&&t.field===e?J(t):void 0;function a0(t){return r0.some(e=>ui(t,e))?u:r`<p class="alarm" role="status">${wn(t.field)}${J(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${bd}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${hd}>Go to the field</button>`:u}
    ${md(t)}`}function Oa({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:l,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${F(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${_t(t,s,i)}
  </div>`}function l0(t){let{numbers:e}=a.quote_wish;return Oa({id:"quote-numbers",label:"Numbers of pieces",value:e??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:ui(t,"sell"),take:n=>Oi({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Oi({numbers:void 0})}})}var u0=()=>nt()?jd("money asking",`${N("studio","/asking")}-name`):jd(),qd=()=>Object.keys(g("studio","/asking")??{}).length>0,d0=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],c0={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Hd(t,e){let{by:n,figure:o}=a.quote_wish,{label:i,unit:s}=c0[n??"price"],l=d=>s&&Ue(d)?`${d.trim()} ${s}`:d;return r`${st("A price, for this moment",n,d0,d=>{Oi({by:d,figure:""}),Z(H("quote-figure"))})}
    ${n?r`<div class="row">
            ${Oa({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:ui(e,n),take:d=>Oi({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${u0}>Keep my ways of selling</button>`}function p0(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${h_(t,e)} ${m0(t,e)} ${m_(t,e)}
  ${Pa({file:a.run.file,question:ga(),prices:t.numbers[0].prices,is_old:e})}`}function m0({numbers:t,steps:e,pack_steps:n,gaps:o,currency:i},s){let l=d=>d===null?"":`, ${d} ${i} more`;return r`<div class="worth-making ${s?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:d})=>d.map(({text:c})=>r`<li><b>${c}</b></li>`))}
      ${o.map(({from:d,to:c,why:p})=>r`<li><b>${d===c?d:`${d} to ${c}`} cannot be made: ${p}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(d=>r`<li><b>${d.sell}: ${d.begins}${l(d.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(d=>r`<li><b>${d.sell}: ${d.shown_as}${l(d.more)} to lay out</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function $_(){let{order:t}=a;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${Ve(e)} ${Ke(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${gt(String(n))}`:u}</p>
    ${Jg()} ${dn(e.now)?xa("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${dn(e.now)?h0():f0()}
    </section>
    ${dn(e.now)?b0():u}`}var f0=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function h0(){let{quote:t,complaint:e,is_old:n}=zg();return r`${t?r`${c_(t)} ${d_(t)}`:u}
    <div class="row">${g0(e)}</div>
    ${qd()?u:Hd(t?.currency,e)} ${e?$0(e):u}
    ${t?r`${w0(t)} ${p_(t)} ${u_(t,n)}
          ${Pa({file:Ft().open.file,question:xd(Ft()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var g0=t=>Oa({id:"order-times",label:"How often it is made",value:Ft().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:ui(t,"times"),take:e=>b(Ft(),{times:e})}),_0=["times","margin","markup","price"];function $0(t){if(_0.some(n=>ui(t,n)))return u;let e=me("order");return r`<p class="alarm" role="status">
      ${e?r`${wn(t.field)}${J(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${kd}>Ask again</button>`:e&&ze()?r`<button type="button" @click=${()=>qt(ze())}>Go to the field</button>`:u}`}function w0({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function b0(){let{file:t,now:e}=Ft().open,n={plan:{file:t,order:e},paper:a.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${ba()}
    <div class="choice">
      ${Xe({words:"Bench sheets",kind:"sheet",file:`${zn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${Un()}</p>
  </section>`}var y0=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function w_(){let t=[...a.files?.orders??[]].sort(y0),e=a.new_order.trim(),n=()=>{rt(async()=>{await Af(e),h({new_order:""})})};return r`${he("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Pe(t,v0):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${F(a.new_order)}
            @input=${o=>h({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${ge("order")}`}function v0(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":z(e,"piece"),n?`due ${gt(n)}`:"",o?`changed ${gt(o)}`:""].filter(Boolean);return Ge({kind:io,one:t,facts:i,open:()=>Ki(t.file)})}function y_(){if(a.view==="order"&&a.order)return b_(a.order.open);let t=On();if(t)return b_(t);let e=k0();if(e)return e;let{run:n}=a,o=a.formula_of==="apart"||!(K(n)||n.theirs||n.failed);return a.view==="formula"&&o?x0():n.theirs?zd(n):n.failed?Fa(`Not saved: ${n.failed}`):K(n)?Ud:Ma(n.shipped?Nd:`Saved in ${n.file}`)}function b_(t){return t.theirs?zd(t):t.failed?Fa(`Not saved: ${t.failed}`):K(t)?Ud:Ma(t.shipped?Nd:`Saved in ${t.file}`)}var Nd="Built-in: your first change is saved as a copy.",Ud={words:"Saving ...",is_kept:!1},Ma=t=>({words:t,is_kept:!0}),Fa=t=>({words:t,is_kept:!1,is_failed:!0}),zd=t=>Fa(lo(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function k0(){let t=a.formulas.apart?"apart":"run",e=an(t);if(e)return zd(e);if((t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&K(o)))return a.complaint?.file===""?Fa(`Not saved: ${a.complaint.problem}`):Ud}function x0(){let t=a.formulas[a.formula_of];return Ma(t?t.shipped?Nd:`Saved in ${t.file}`:"")}function La(){let{view:t,mould:e,order:n,past:o,future:i}=a;if(t==="moulds"&&e)return Ca(e,xf,Tf);let s=ae(t)?On():void 0;return s?Ca({past:v_(s,o),future:v_(s,i)},Bi,Hl):ae(t)?{undo:Ii()&&Ru,redo:Kl()&&vh}:t==="order"&&n?Ca(n,Df,Pf):Ca({past:o,future:i},Bi,Hl)}function v_(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var Ca=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var k_={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},T0={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},R0="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",S0="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Jd=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${T`<path d=${t} />`}</svg>`;function R_(){let t=a.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Gc.map(e=>S_(e,k_[e],r`${k_[e]}`))}
              </nav>
              ${D0()}`}
    </div>
    ${t?u:P0()}
  </header>`}var A0={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},Wa=["metric","both","us"],x_={metric:"g",both:"both",us:"oz"},T_=t=>()=>{h({units:t}),localStorage.setItem("units",t)};function D0(){let t=Wa[(Wa.indexOf(a.units)+1)%Wa.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${Wa.map(e=>r`<button type="button" aria-pressed=${a.units===e?"true":"false"} @click=${T_(e)}>
            ${A0[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${T_(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${x_[a.units]}<span
        class="unseen"
        >. Change to ${x_[t]}</span
      >
    </button>`}function P0(){let{undo:t,redo:e}=La();return r`<div class="bar">
    ${a.run.file?O0():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${Jd(R0)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${Jd(S0)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?L0():u}
  </div>`}function O0(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Yc.map(M0)}</div>
  </nav>`}function M0(t){let[e,n]=T0[t],o=F0(t);return S_(t,o?`${e}, ${o.words}`:e,r`${Jd(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function F0(t){if(t==="watch"&&Cf())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&C0())return{sign:"\u25CB",words:"missing"}}var C0=()=>a.complaint!==void 0&&!a.complaint.is_fault;function S_(t,e,n){let o=a.view===t||a.view==="order"&&t==="orders";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{$n(t)}}
  >
    ${n}
  </button>`}function L0(){let{words:t,is_kept:e,is_failed:n}=y_();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var A_=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${f({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${f({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${xa("run")}`;function P_(t){if(!fh(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=Bt(e)?`${z(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${D_(t,"pour","The base, whole run")}
      ${e.pipe?D_(t,"pipe","The topping, whole run"):u} ${W0(t)}
    </div>
  </section>`}function D_(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...Mh(i),...Ur(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:l,i:d})=>Ba(`${e}.ingredients.${d}.g`,l.name,bo(a.units,l)))}
    ${Ba(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",C(a.units,i.make_g))}
  </div>`}var Ba=(t,e,n)=>M({key:`needs.${t}`,label:e,shown:n,of:t});function W0(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,l)=>s.colours.map((d,c)=>({layer:s,one:d,i:l,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>dt(a.units,Ct(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:l,i:d,j:c})=>Ba(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${s.name}`,bo(a.units,l)))}
    ${o.map((s,l)=>Ba(`dust.${l}.g`,s.name,i(s)))}
  </div>`}function O_(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:l}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${M({key:"piece.fresh",label:c("Fresh"),shown:C(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:M({key:"piece.cured",label:c("Cured"),shown:C(a.units,o),of:"piece.cured_g"})}
      ${s?M({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:C(a.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:M({key:"piece.label",label:"Net weight for the label",shown:C(a.units,i,0),of:"piece.label_g"})}
      ${l?M({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${M({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Vd(t)}
    </section>
    ${__()} ${P_(ei(t))}`}function Vd(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[F_,Qd]=[440,270],[ks,Kd,Ea,di]=[64,F_-10,10,Qd-52],B0=6,E0=8;function M_(t){let e=t/B0,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var ci=t=>R(t,1);function C_(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>ci(ks+(Kd-ks)*d/n),s=d=>ci(di-(di-Ea)*d/o),l=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${F_} ${Qd}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${M_(n).map(d=>T`<path class="grid" d="M${i(d)} ${Ea}V${di}" />
            <text x=${i(d)} y=${di+20} text-anchor="middle">${ci(d)}</text>`)}
      ${M_(o).map(d=>T`<path class="grid" d="M${ks} ${s(d)}H${Kd}" />
            <text x=${ks-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${ci(d)}</text>`)}
      ${T`<text x=${(ks+Kd)/2} y=${Qd-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Ea+di)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${Ea}V${di}" />`}
    </svg>
    ${I0(t)}`}function I0(t){let e=Math.max(1,Math.round(t.length/E0)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${ci(o)}</th>
              <td>${ci(i)}</td>
              <td>${R(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ia=Math.PI/8,j0=500,Gd=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},j0))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await Fe(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Jo(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;le(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Ia)}>Turn left</button>
        <button type="button" @click=${e(Ia)}>Turn right</button>
        <button type="button" @click=${n(Ia)}>From above</button>
        <button type="button" @click=${n(-Ia)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Gd);function L_(t){let{measured:e}=a;if(!e)return r`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${M({key:"mould.brimful",label:"To the brim",note:`${A(kt(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Rt(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${C_(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${q0(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function q0(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var H0=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function W_(t){let{batch:e}=a.printing;return Bt(t)&&e<=t.pieces.batches?e:0}function N0(t){if(!Bt(t))return u;let e=W_(t),n=i=>yo({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${F(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${H0(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Qe(t,s)}`))}
      </select>
    </div>
  </div>`}function B_(t){let{paper:e}=a.printing,n=zn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},l=W_(t),d={plan:o,paper:e,...l?{batch:String(l)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ba()} ${N0(t)}
    <div class="choice">
      ${Xe({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?Ht("Label draft",Vt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Ht("Drawing of the pour, true size",Vt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Ht("Drawing of the piece",Vt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Ht("Whole piece, GLB (3D viewer)",Vt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Ht("Whole piece, STL (3D printing)",Vt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${Ht("Filled cavity, GLB (3D viewer)",Vt(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${Ht("Cavity, STL (3D printing)",Vt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${Un()||`The drawing has the pour line ${A(kt(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var E_=t=>B_(t);var Tt={at:"/decorations"},pi=t=>`${Tt.at}/${t}`,Jn=t=>O("run",`${pi(t)}/name`).trim()||`Decoration ${t+1}`,Kt=()=>w(a.run.now,"/cut")!==void 0,ko=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),xs=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var se="/batch",I_=t=>`${t}/moulds_owned`;function Yd(){return P({name:"batches",pointers:[se],summary:`Batches${U0()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${E("run",se)}
        <div class="row">${z0()} ${V0()}</div>
        ${S({question:"Cavities at each filling",at:se,asked_at:`${se}/fill`,chosen:g("run",`${se}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>j_("fill",t==="full"?t:void 0)})}`})}function U0(){let[t,e]=[`${se}/pieces`,`${se}/casts`].map(o=>O("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function j_(t,e){let n=ut("run",se,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function z0(){let t=g("run",`${se}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${se}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Kt()?g("run",`${se}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${J0}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function J0(){B("run","Counted in loaves",se,j_("pieces",void 0))}function V0(){let t=`${se}/whippings`;return!ne()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var K0={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},_e={at:"/dust"},ja=t=>O("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function q_(){it("set-up dust"),I(_e,{name:""},"Dust")}function Q0(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function H_(t){let e=`/dust/${t}`,n=Q0(e),o=ja(t),i=s=>({...ut("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...K0[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${S({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${En("run",e,o)}`}var G0={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function Y0(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function N_(t,e){let n=Y0(t),o=i=>({...ut("run",t,["on_top","buried"]),...G0[i]});return ko(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:ko(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${S({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Z0(`${t}/on_top`):n==="buried"?tR(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Z0(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${U_(t,"It is turned")}`}function U_(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var X0=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function tR(t,e){let n=`${t}/buried`,o=e===k(Tt).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${E("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${S({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${S({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:X0,puts:l=>nR(t,l)})}
  ${i==="said"?iR(t,e):u}`}var eR=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${T`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,z_={x:"",y:"",height:""};function nR(t,e){let n=ut("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${xs(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>z_);return{...ut("run",t,["per_piece","per_cast"]),[J_(t)]:i.length,buried:{...n,places:i}}}var J_=t=>Kt()?"per_cast":xs(t)??"per_piece";function oR(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,l)=>D(s,`${t}/${l}`,void 0),n);return D(i,`${t}/${J_(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function iR(t,e){let n=oR(t),o=k(n);return r`${eR()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let l=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${L(n,s)} role="group" aria-label="Place ${s+1} of ${Jn(e)}">
        ${E("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${q(n,s,`place ${s+1} of ${Jn(e)}`)}
        </div>
        ${U_(l,`Place ${s+1} is turned`)}
      </div>`})}
    ${Q(n,"Add a place",()=>I(n,z_,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var K_=t=>`${t} made`;function sR(){let t=pi(k(Tt).length),e=Kt()?{}:{per_piece:""};it("set-up decorate");for(let n of[K_(t),`${t} where`])Wt("run",n);I(Tt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Q_(){let[t,e]=[k(Tt).length>0,k(_e).length>0];return r`${Q(Tt,t?"Add another decoration":"Add a decoration",sR)}
  ${Q(_e,e?"Add another dust":"Add a dust",q_)}`}function G_(t){let e=pi(t);return r` ${E("run",e)} ${dR(e)}
    <div class="row">
      ${aR(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${ko(e)==="bought"?u:rR(e)}
    </div>
    ${N_(e,t)} ${En("run",e,Jn(t))}`}var rR=t=>r`${f({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${f({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${f({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function aR(t){let e=xs(t),n=lt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Kt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Kt()?"In each loaf":"In each cast":Kt()?"On each bar":"On each piece",i=s=>({...ut("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Kt()?S({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var lR={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},V_={density:"",melt_loss:"",left_in_jug:""};function uR(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(V_),"time_per_tray_fill"]:[]],o=ko(t)==="bought"&&e!=="bought"?V_:{};return{...ut("run",t,n),...o,...lR[e]}}function dR(t){let e=ko(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:K_(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${S({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>uR(t,o)})}
        ${e?cR[e](t):u}
        ${e==="bought"?u:f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var cR={mould:pR,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>f({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function pR(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${ti("Cast in",`${t}/mould`,a.files?.moulds)}
  ${S({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${S({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Y_(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!ne()?u:r`<div class="labelled">
      ${_u(t,"Make one pot of lye solution for both",e,{})}${mn("lye_solution")}
    </div>
    ${Te("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Z_(t){let e={at:"/bottles"},n=k(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&ct(t)?` Weights are of ${ct(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${L(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${q(e,i,l)}
            </div>
            ${E("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?mR(t,i,l):u}
          </div>`})}
        ${Q(e,"Use up a bottle",()=>I(e,{name:"",holds:""},"bottle"))}`})}function mR(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>M({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:dt(a.units,Ct(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Ts="/label",Xd=()=>g("run",Ts)!==void 0;function X_(){let e=g("studio",mi.studio)!==void 0?{weight_spread:""}:{market:""};it("set-up label"),B("run","Label added",Ts,e,H("lane-label"))}function t$(){return r`${E("run",Ts)} ${fR()}
    <button type="button" @click=${()=>B("run","Label removed",Ts,void 0)}>Remove the label</button>`}var mi={run:"/label/market",studio:"/label/market"};function tc(){let{of:t,at:e}=ss(mi);return r`${S({of:t,question:"Where it is sold",at:t==="run"?Ts:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?hR(n):n})}
  ${jn("Where it is sold",[mi])}`}function fR(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${tc()}
  ${S({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:gR})}
  ${t==="weighed"?_R():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${Ye(mi)==="EU"||g("run",Zd)!==void 0?_u(Zd,"With the e mark",g("run",Zd)===!0,!0):u}`}var Zd="/label/e_mark";function hR(t){return{...ut("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function gR(t){let e=ut("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function _R(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${L(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${q(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Q(t,"One more piece",()=>I(t,"","piece"))}`}function e$(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${vu(t)?`${c.count} of `:""}${Qe(t,c)}`),l=`Made in ${e} batches${vu(t)?": ":" of "}${gn(s)}; ${Er(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${Bt(t)?r`<p><b>${l}</b></p>`:u}
    ${i>0?r`<p>
            ${z(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var n$=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function o$(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?a$(i):0,l=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?$R(t,e,n,l):0;return{brim:n,line:o,topping:d,ball:s,proud:l,top:Math.max(n,(t.pipe?n:o)+d+l)}}function $R(t,e,n,o){let i=xe(w(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[l,d]=Yl(e,e.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*t.pipe.visible_each_ml/c}function ec(t,e){let[n,o]=Yl(t,t.brim-.01),i=(n+o)/2,s=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,$)=>{let v=i+$*(Math.max(l(m),l(_))+(o-n)*.035);return`C${v} ${d(m)} ${v} ${d(_)} ${i+$*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+l(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Rs=(t,e)=>t===e?`shaded ${e}`:"plain";function Vn(t,e,n=u){return r`${i$(t,e,n)}
  ${t==="decorate"&&nc(e)?r`<p class="hint">${nc(e)}</p>`:u}`}var Kn=(t,e)=>r`<div class="small-view">${i$(t,e,u)}</div>`;function i$(t,e,n){let o=a.measured?.outline;if(!o)return r`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=o$(e,o),s=o.right-o.left,l=Math.max(6,s*.1),d={x:o.left-l,y:-i.top-l,w:s+2*l,h:i.top+2*l};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${AR(t,e)}>
      ${wR(t)} ${bR(t,e,o,i)} ${vR(t,e,o,i)} ${kR()}
      ${xR(t,e,o,i)} ${SR(t,e,o,i)}
      ${T`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function s$(t,e){let n=a.measured.outline,o=o$(t,n),i=n.right-n.left,s=Math.max(6,i*.1),l=o.top+2*s;return{share:(o.top+s-e)/l,per_mm:1/l,w:i+2*s,h:l}}function wR(t){return T`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${n$(r$())} /></clipPath>
  </defs>`}function r$(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function bR(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],l=(s.length?s.map(d=>yR(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return T`<g clip-path="url(#cavity-${t})">${l.map((d,c)=>T`<path class="whole" d=${d} /><path class="${Rs(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?T`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function yR(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function vR(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(w(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,l=(n.left+n.right)/2;return T`<g clip-path="url(#cavity-${t})"><rect class=${Rs(t,"pipe")} x=${l-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function kR(){return T`<path class="wall" fill-rule="evenodd" d=${n$(r$())} />`}function xR(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return T`
    ${e.pipe?T`<path class=${Rs(t,"pipe")} d=${ec(n,o)} />${t==="pipe"?T`<path fill="url(#dots-pipe)" d=${ec(n,o)} />`:u}`:u}
    ${t==="dust"?TR(e,n,o):u}
    ${o.ball?T`<circle class=${Rs(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>RR(Rs(t,"decorate"),i,d,c,p))}`}function TR(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return T`<path class="powder" d=${t.pipe?ec(e,n):o} />`}function RR(t,e,n,o,i){let[s,l]=[e+n.middle_mm[0],n.middle_mm[2]],d=xe(w(a.run.now,`/decorations/${i}/rod/diameter`)),c=xe(w(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return T`<circle class=${t} cx=${s} cy=${-l} r=${a$(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),$=d/2*Math.sqrt(1-_*_),v=c*_+2*$,x=-180/Math.PI*Math.atan2(m,p);return T`<rect class=${t} x=${-v/2} y=${-d/2} width=${v} height=${d} rx=${$} ry=${$?d/2:0}
    transform="translate(${s} ${-l}) rotate(${x})" />`}var a$=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function nc(t){let e=(t.decorations??[]).filter((n,o)=>w(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function SR(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return T`${Array.from({length:i-1},(s,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return T`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function AR(t,e){let n=A(kt(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${nc(e)}`.trim()}var DR=t=>`set-up ${t}`;function Qt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let l=DR(t),d=()=>pe({part:e,fold:l},s);if(fn())return r`${d()}`;i.some(([m,_])=>Lt(m,_))&&it(l);let c=a.open.has(l),p=Xo().filter(({folds:m})=>m.includes(l)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>It("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var mt=t=>r`<p class="order ${a.is_old&&a.plan?"old":""}">${t}</p>`;var l$=()=>k(Tt).length>0,u$=()=>k(_e).length>0;function d$(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function c$(t){let e=t?k(Tt).flatMap((n,o)=>f$(t,o)??[]):[];return Qt({name:"decorate",title:"Decorate",drawing:t&&(()=>Kn("decorate",t)),result:e.length?e.map(n=>MR(t,n)):mt(p$(Tt,Jn)),about:[["run",Tt.at]],form:()=>r`${t?r`<div class="side">${Vn("decorate",t)}</div>`:u}
        <div class="weights">${t?k(Tt).map((n,o)=>PR(t,o)):u}</div>
        ${h$(Tt,Jn,G_)}`})}var p$=(t,e)=>`${k(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function PR(t,e){let n=f$(t,e);return n?FR(t,n,e):u}function m$(t){let e=t?.dust?.length?k(_e).map((n,o)=>LR(t,o)):void 0;return Qt({name:"dust",title:"Dust",drawing:t&&(()=>Kn("dust",t)),result:e??mt(p$(_e,ja)),about:[["run",_e.at]],form:()=>r`<div class="side">${t?Vn("dust",t):u}</div>
        <div class="weights">${t?k(_e).map((n,o)=>WR(t,o)):u}</div>
        ${h$(_e,ja,H_)}`})}var f$=(t,e)=>d$(t.decorations,k(Tt),O("run",`/decorations/${e}/name`),e);function h$(t,e,n){return r`<div class="all-questions">
    ${k(t).map((o,i)=>r`<section class="questions" id=${L(t,i)} aria-labelledby="${L(t,i)}-title">
          <div class="part-head">
            <h3 id="${L(t,i)}-title">${e(i)}</h3>
            ${q(t,i,e(i))}
          </div>
          ${pe({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function OR(t,e){return r`<h3>${t.name}</h3>
    ${M({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function MR(t,e){if(e.bought)return mt(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=A(dt(a.units,Ct(e,"make_")));return mt(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${Bt(t.whole)?", for the whole run":""}.`)}function FR(t,e,n){return e.bought?OR(e,n):r`<h3>${e.name} ${Bt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${M({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:dt(a.units,Ct(e,"make_")),of:`decorations.${n}.make_g`})}
    ${M({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(e.volume_each_ml,2)} ml`,shown:C(a.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${Wn(e.casting_s)} of casting.</p>`:u} ${CR(e,n)}`}function CR(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":A(kt(a.units,l)),s=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?A(kt(a.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
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
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${go(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function LR(t,e){let n=g$(t,e);if(!n)return u;let o=ct(t);return mt(r`<b>${A(dt(a.units,Ct(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var g$=(t,e)=>d$(t.dust,k(_e),O("run",`/dust/${e}/name`),e);function WR(t,e){let n=g$(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=M({key:`set-up.dust.${e}`,label:n.name,note:ct(t),shown:dt(a.units,Ct(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function _$(t){let e=t?.cut;return Qt({name:"cut",title:"Cut",drawing:t&&(()=>Kn("cut",t)),result:e?BR(t,e):mt("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?ER(t,e):u}
        <div class="all-questions">${ig()}</div>`})}var BR=(t,e)=>mt(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${A(C(a.units,t.piece.fresh_g))} on average, fresh.`);function ER(t,e){return r`<div class="side">${Vn("cut",t)}</div>
    <div class="weights">
      ${M({key:"cut.bar",label:"A bar on average, fresh",note:IR(e),shown:C(a.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${M({key:"cut.offcuts",label:"Offcuts",shown:C(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${jR(e)}
    </div>`}function IR(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function jR(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function $$(t){return Qt({name:"label",title:"Label",drawing:HR,result:mt(qR(t)),about:[["run","/label"]],form:()=>r`<div class="more">${t$()} ${t?Vd(t):u}</div>`})}function qR(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${A(C(a.units,e,0))}</b>, sold in the ${t.label.market}.`}var HR=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${T`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Gn="/pour/layers",Qn={at:Gn,in_order:!0},oc=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Ha=()=>k(Qn);function NR(){let t=e=>Ha().some(n=>e in n);return oc.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function b$(t){let e=Ha(),n=NR();return e.length?r`<h3>
      Layers, lowest first ${t&&ct(t)?r`<small>${ct(t)}</small>`:u}
    </h3>
    ${S({question:"All of them by",at:Gn,is_told_elsewhere:!0,chosen:n,answers:oc,puts:o=>zR(o,t)})}
    <div class="items">${e.map((o,i)=>JR(o,i,n,t))}</div>
    ${Q(Qn,"One more layer on top",()=>I(Qn,{name:UR(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Q(Qn,"Pour it in layers",()=>I(Qn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function UR(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function y$(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function zR(t,e){let n=Ha(),o=a.is_old?void 0:e,i=(s,l)=>{let d=y$(o,s,l);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((s,l)=>{let d=qa(l),c=t!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,l)}}})}var qa=t=>ut("run",`${Gn}/${t}`,[...oc.map(([e])=>e),"rest"]);function JR(t,e,n,o){let i=`${Gn}/${e}`,s=String(t.name)||`Layer ${e+1}`,l=y$(o,t,e);return r`<div class="part" id=${L(Qn,e)} role="group" aria-label="Layer ${s}">
    ${l&&o?VR(o,l,e):r`<p class="part-title">${s}</p>`} ${E("run",i)}
    ${QR(t,e,n,s)}
    ${o&&l?l.colours.map((d,c)=>KR(o,d,e,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${XR(i,s)} ${tS(i,e)}
        ${q(Qn,e,s)}`})}
  </div>`}function VR(t,e,n){return M({key:`pour.layer.${n}`,label:e.name,note:`${du(kt(a.units,e.to_mm-e.from_mm))} thick, ${du(C(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?C(a.units,e.g):dt(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function KR(t,e,n,o){return M({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${R(e.teaspoons,1)} tsp`:"",shown:bo(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function QR(t,e,n,o){if(n==="parts")return GR(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${Gn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?ZR(e,n):YR(e,n)}
    >
      Takes the rest
    </button>`}function GR(t,e,n){let o=`${Gn}/${e}/parts`,i=s=>()=>{h({typed:void 0}),U("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function YR(t,e){let n=Ha().map((o,i)=>i===t?{...qa(i),rest:!0}:o.rest?{...qa(i),[e]:""}:o);B("run","takes the rest",Gn,n)}function ZR(t,e){let n=`${Gn}/${t}`;B("run","amount of the layer",n,{...qa(t),[e]:""},et("run",`${n}/${e}`))}function XR(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${k(n).map((o,i)=>{let s=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${L(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${q(n,i,l)}
      </div>
      ${E("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${En("run",s,l)}
    </div>`})}
  ${Q(n,"Add a colour",()=>I(n,{name:"",rate:""},"colour"))}`}var w$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function tS(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===k(Qn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Ae({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${S({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:w$,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!w$.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Me=()=>w(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function ic(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Me()==="depth"?n-o:o;h({typed:void 0}),U("run",`/pour/line/${Me()}`,`${R(i,2)} mm`)}function v$(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=xe(w(a.run.now,`/pour/line/${Me()}`));return n===void 0?t.pour.below_brim_mm:Me()==="depth"?e-n:n}function eS(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,s)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,s)}function nS(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=v$(t),{share:o,h:i}=s$(t,e-n),s=c=>eS(c,p=>ic(t,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),ic(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${A(kt(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function oS(t){let{pour:e}=t,n=A(kt(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=ct(t);return mt(r`${o}, <b>${A(C(a.units,e.mass_each_g))}</b> ${i}; make
      <b>${A(C(a.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var k$=()=>Me()==="depth"?"Depth":"Below brim";function x$(t){return Qt({name:"pour",title:"Pour",drawing:t&&(()=>Kn("pour",t)),result:t?oS(t):mt(`${iS()}.`),about:[["run","/pour"]],form:()=>r`${t?sS(t):rS()}
        <div class="more">${Na("pour")} ${b$(t)} ${Zr("pour")}</div>`})}function iS(){let t=O("run",`/pour/line/${Me()}`);return t?`${t} ${Me()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function sS(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>ic(t,v$(t)+i);return r`<div class="side">
      ${Vn("pour",t,nS(t))} ${T$(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:k$(),at:`/pour/line/${Me()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${M({key:"pour.each",label:"Weigh into each",shown:C(a.units,e.mass_each_g),note:`${R(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${M({key:"pour.mm",label:"1 mm more or less",shown:Rt(a.units,e.ml_per_mm,2),note:`${He(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${M({key:"set-up.pour.make",label:"Base to make",note:ct(t),shown:C(a.units,e.make_g),of:`${n}.make_g`})}
      ${M({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var rS=()=>r`<div class="side">
    ${T$()} ${E("run","/pour/line")}
    ${f({label:k$(),at:`/pour/line/${Me()}`,unit:"mm"})}
  </div>`,Na=t=>r`<button type="button" @click=${()=>Jt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function T$(t){let e=n=>{if(n===Me())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;B("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return st("The pour line is measured",Me(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var aS=[0,50,80,100];function R$(t){let e=t?.pipe;return Qt({name:"pipe",title:"Pipe",drawing:e&&(()=>Kn("pipe",t)),result:e?lS(t,e):mt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?uS(t,e):dS()})}function lS(t,e){let n=ct(t);return mt(r`Pipe <b>${R(e.volume_each_ml,0)} ml</b> on each, ${A(C(a.units,e.mass_each_g))} at this
      whipped density; make <b>${A(C(a.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function uS(t,e){return r`<div class="side">
      ${Vn("pipe",t)}
      ${M({key:"pipe.each",label:"Topping on each",shown:Rt(a.units,e.volume_each_ml),note:`${R(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${M({key:"set-up.pipe.make",label:"Topping to make",note:ct(t),shown:C(a.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${M({key:"pipe.density",label:"Whipped density",note:`overrun ${R(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Na("pipe")}
    </div>
    <div class="weights">${Qu(e)} ${P$()} ${cS(t)} ${_S(t)}</div>
    <div class="more">${Ku(e)} ${Vu()}</div>`}var Ss=t=>t===0?"pipe":`pipe.whipping${t}`,As=(t,e)=>`${t.place}.pipe.whippings.${e}`;function S$(t,e){let n=Br(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function dS(){return r`<div class="more">${Ku()}</div>
    <div class="side">${P$()} ${g("run","/pipe/whip_now")===void 0?u:D$()}</div>
    <div class="weights">${Qu()} ${Na("pipe")}</div>
    <div class="more">${Vu()}</div>`}var A$=t=>ct(t)?r`<small>${ct(t)}</small>`:u;function cS(t){return r`<h3>Today's bowl ${A$(t)}</h3>
    ${D$()} ${t.whippings.map((e,n)=>pS(t,e,n))}`}function pS(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${S$(t,e)}
  ${o==null?u:M({key:`${Ss(n)}.now`,label:"Enough for",note:s,shown:[z(o,"piece"),""],size:"weigh",of:`${As(t,n)}.pieces_now`})}
  ${fS(t,e,n)}`}function D$(){let t=g("run","/pipe/whip/holds"),e=t===void 0?us():{holds:t,net:""};return Ae({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:mS})}function mS(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${ds("/pipe/whip_now")}
  </div>`}function fS(t,e,n){return e.readings?.length?P({name:`${Ss(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>hS(t,e,n)}):u}function hS(t,e,n){return r`<table class="readings">
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
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${go(`${Ss(n)}.readings`,"Show the calculation",`${As(t,n)}.readings`)}`}function P$(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",t))?.[1]?.replace(",",".")),n=Lt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Bn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${aS.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>U("run",t,`${o} %`)}
          >
            ${gS(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function gS(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${T`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function _S(t){let e=t.whippings.map(i=>({one:i,words:$S(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${A$(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${S$(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${go("pipe.limits","How the limits come about",`${As(t,0)}.limits`)}`}function $S({piping_s:t,lye_spoonfuls:e}){return[t?`${Wn(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${Wn(e.altogether_s)}`:""].filter(Boolean).join("; ")}function M$(t){return Qt({name:"lye",title:"Lye",drawing:bS,result:t?O$(t).map(wS):mt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${O$(t).map(yS)} ${kS(t)}</div>`:u}
        <div class="more">${Y_()} ${Z_(t)}</div>`})}function O$(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let l=Br(t,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:As(t,s),pieces:e,key:Ss(s)}});return[n,...o]}function wS({title:t,batter:e,slot:n,pieces:o}){let i=Cn(n,o).length?" \u26A0":"";return mt(r`${t}: ${R(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${ce(e.superfat_percent.effective)}${i}</b>.`)}var bS=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${T`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function yS({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=Cn(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${M({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${M({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${ce(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${Qi(t,c,i)} ${F$(n.superfat_percent)} ${vS(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function F$(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,l=`It lies between ${ce(e)} and ${ce(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${ce(o)} and ${ce(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return uu(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function vS(t,e,n){return t.heat?r`${C$(t.heat)} ${go(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function C$(t){let e=i=>A(Jf(a.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?Wn(i.shortest_min*60):"at once"} to ${Wn(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function kS(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,s,l,d,c="")=>M({key:`pot.${i}`,label:s,note:c,shown:l,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(e.strength_percent,1)} %${ct(t)&&`; ${ct(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",dt(n,Ct(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,dt(n,Ct(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",dt(n,Ct(e,"lye_")),"lye_g",xS(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,dt(n,Ct(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${ce(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,dt(n,Ct(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Qi(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?F$(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${A(dt(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?C$(e.heat):u}
  </div>`}function xS(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=Ct(t,"lye_"),i=dt(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${A(i)} with the pot: make up with water to that after cooling`}var Ds=new Map,TS=()=>Ds.clear(),RS=t=>typeof t?.owned=="number"?t.owned:void 0;function sc(t){let e=zt(t,a.files?.moulds);return Ds.has(e)||(Ds.set(e,void 0),SS(e)),Ds.get(e)}async function SS(t){try{Ds.set(t,RS(ht((await Dt(t)).text))),V()}catch(e){if(!(e instanceof y))throw e}}async function L$(t,e){let n=sc(t);n!==void 0&&(U("studio",e,n),j(`${n} kept in the studio`),await AS(zt(t,a.files?.moulds)),at())}async function AS(t){let e=await Mt(Ut,t);e.shipped||e.theirs||(vt(e,D(e.now,"/owned",void 0)),await Be(e),TS())}function Ua(t=!1){let e=(n,o,i,s=!1)=>f({of:"studio",label:o,at:`/work/${n}`,unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var za=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Ja=t=>t[0].toUpperCase()+t.slice(1),rc=t=>f({...t,of:"studio"});function W$(){return!fn()&&a.run.file&&a.open.has("folded studio days")&&wa("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${P({of:"studio",name:"days",pointers:["/days",...Oe()?[]:["/work"]],summary:r`<span>When you work${r`<small>${DS()}</small>`}</span>`,body:PS})}
  </section>`}function DS(){let t=g("studio","/days/making")??{};return za.filter(e=>t[e]).map(e=>`${Ja(e)} ${String(t[e])}`).join(", ")}var PS=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${za.map(t=>rc({label:Ja(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${E("studio","/days")} ${E("studio","/days/making")} ${OS()} ${MS()} ${CS()}
    ${Oe()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${Ua(g("studio","/days")!==void 0)}</div>
            ${E("studio","/work")}`}`;function OS(){let t="/days/small_jobs",e=N("studio",t),n=lt("studio",t),o=l=>{let d=za.filter(p=>p===l!==n.includes(p)),c=p=>In(D(p,t,d.length?[...d]:void 0),"/days");Se("studio",`${Ja(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Lt("studio",t),s=za.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(l=>r`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Ja(l)}
          </button>`)}
    </div>
    ${_t(e,i,"Without any, these wait for a making day.")}
  </div>`}var Ps={of:"studio",at:"/days/off",and:t=>In(t,"/days")};function MS(){return r`<p class="question">Days off and holidays</p>
    ${k(Ps).map((t,e)=>FS(String(t),e))}
    ${Q(Ps,"Add a day off",()=>I(Ps,"","A day off"))}`}function FS(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=N("studio",n),l=xt("studio",n),d=(m,_)=>U("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,$,v)=>r`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${F($)}
        @input=${x=>v(x.target.value)}
        @blur=${Zi}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${s}-said`:u}
      />
      ${m===s?_t(s,l):u}
    </div>`,p=o?`off on ${gt(o)}`:`day off ${e+1}`;return r`<div class="row" id=${L(Ps,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${q(Ps,e,p)}
  </div>`}function CS(){let t=(e,n,o)=>rc({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${rc({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${w(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var LS={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},B$=t=>({run:t,studio:t}),ac=t=>B$(`/losses/${t}`);function lc(t,e){return LS[t].map(({name:n,label:o,unit:i,optional:s})=>At(B$(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var en=()=>a.plan?.piece.cost?.materials.map(t=>t.name)??[],ft=t=>a.fats.find(e=>e.id===t)?.name??t,uc=8;function Os({key:t,label:e,offers:n,taken:o,take:i}){let s=`find-${t}`,l=a.finding?.key===t?a.finding.text:"",d=(l.trim()?WS(l):n).filter($=>!o($)),c=$=>{h({finding:void 0}),i($)},p=l.trim(),m=p!==""&&!o(p)&&!d.some($=>jt(ft($))===jt(p)),_=()=>{if(!p)return;let $=d.find(x=>jt(ft(x))===jt(p)||jt(x)===jt(p)),v=d.length===1?d[0]:void 0;($??v??m)&&c($??v??p)};return r`<div class="picker" role="group" aria-labelledby="${s}-label">
    <p class="question" id="${s}-label">${e}</p>
    <div class="field">
      <label for=${s}>Find it by its name</label>
      <input
        id=${s}
        .value=${l}
        @input=${$=>h({finding:{key:t,text:$.target.value}})}
        @keydown=${$=>{$.key==="Enter"&&_()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${d.slice(0,uc).map($=>r`<button type="button" @click=${()=>c($)}>${ft($)}</button>`)}
      ${m?r`<button type="button" @click=${()=>c(p)}>Add "${p}"</button>`:u}
    </div>
    ${d.length>uc?r`<p class="hint">${d.length-uc} more: type a part of the name.</p>`:u}
  </div>`}function WS(t){let e=en(),n=jt(t).split(/\s+/).filter(Boolean),o=a.fats.filter(s=>pn(s,t)!==void 0).map(({id:s})=>s),i=s=>n.every(l=>jt(ft(s)).includes(l));return[...new Set([...e.filter(s=>i(s)||o.includes(s)),...o])]}var re=(t,e)=>Object.keys(g(t,e)??{}),E$=(t,e)=>`${N(t,e)}-name`;function cc({of:t,at:e,label:n,add:o,blank:i,then:s}){let l=E$(t,e),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",re(t,e).includes(p))return qt(s(p)());B(t,`${p} added`,`${e}/${Y(p)}`,i,s(p))};return r`<div class="row">
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
  </div>`}var dc;function pc({of:t,at:e,name:n,label:o,also:i=s=>s}){let s=`${N(t,e)}-${re(t,e).indexOf(n)}-called`,l=c=>{let p=c.target,m=p.value.trim(),_=m!==n&&re(t,e).includes(m);if(dc=_?{id:s,words:`Another is called ${m} already`}:void 0,!m||_||m===n)return p.value=n,V();Se(t,`${n} is called ${m}`,$=>i(BS($,e,n,m),m),H(s))},d=dc?.id===s?dc.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${s}>${o}</label>
    <input
      id=${s}
      .value=${F(n)}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d?`${s}-said`:u}
    />
    ${_t(s,d)}
  </div>`}function BS(t,e,n,o){let i=Object.entries(w(t,e)??{}).map(([s,l])=>[s===n?o:s,l]);return D(t,e,Object.fromEntries(i))}function Ms(t,e,n,o=n){let i=s=>In(D(s,`${e}/${Y(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>Se(t,`${o} removed`,i,H(E$(t,e)))}
    >
      ×
    </button>
  </div>`}var mc={holds:"",paid:""},Va=t=>({of:"studio",at:`/packs/${Y(t)}`,in_order:!0,and:(e,n)=>n?e:In(e,"/packs")});function ES(t){let e=a.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function I$(t,e){let n=new Set(ES(e).map(o=>o.toLowerCase()));return re("studio",t).find(o=>n.has(o.toLowerCase()))}var xo=t=>I$("/packs",t),j$=t=>en().includes(t)||a.fats.some(e=>e.id===t)?"g":void 0,q$="money packs";function H$(t){return r`${re("studio","/packs").map(e=>IS(e,t))}
  ${Os({key:"pack",label:"Which material comes in packs?",offers:en(),taken:e=>xo(e)!==void 0,take:Ka})}`}function IS(t,e){let n=Va(t),o=ft(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,s)=>jS(n,s,o,j$(t),e))}
    <div class="row">
      ${Q(n,r`Another pack of ${o}`,()=>I(n,mc,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${Y(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
    </div>
  </div>`}function jS(t,e,n,o,i){let s=`${t.at}/${e}`,l=(c,p,m={})=>f({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Lt("studio",`${s}/holds`);return r`<div class="row" id=${L(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${qS(s)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${q(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function qS(t){let e=`${t}/from`,n=re("studio","/sellers");return n.length?$t({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:e,optional:!0,short:!0})}function Ka(t){let e=`/packs/${Y(t)}`,[n,o]=[`/prices/${Y(t)}`,`/money/prices/${Y(t)}`],i=li().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(NS),l=s.length?[...s,mc]:[mc];Dn([["studio",c=>HS(D(as(c,[n]),e,l))],...i!==void 0?[["run",c=>as(c,[o])]]:[]]),j(s.length?`The price of ${ft(t)} is its first pack now`:`${ft(t)} added`),Wt("studio",q$),Z(Re(L(Va(t),l.length-1)))}var HS=t=>w(t,"/currency")?t:D(t,"/currency",va());function NS(t){let e=w(t,"/paid");if(!e)return[];let n=w(t,"/confirmed");return[{holds:w(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var N$=t=>r`<button
    type="button"
    aria-label="Another pack size of ${ft(t)}"
    @click=${()=>Ka(t)}
  >
    Another pack size
  </button>`;function U$(t){let e=xo(t),n=lt("studio",Va(e).at).length,o=()=>{Wt("studio",q$),Z(Re(L(Va(e),0)))};return r`<div class="row">
    <p>${ft(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ft(t)}" @click=${o}>To its packs</button>
  </div>`}function z$(){let t=e=>`/have/${Y(e)}`;return r`${re("studio","/have").map(e=>{let n=j$(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${f({of:"studio",label:ft(e),at:t(e),unit:n,hint:o,short:!0})}
      ${Ms("studio","/have",e,ft(e))}
    </div>`})}
  ${Os({key:"have",label:"Which material stands on the shelf?",offers:en(),taken:e=>I$("/have",e)!==void 0,take:e=>B("studio",`${ft(e)} added`,t(e),"",et("studio",t(e)))})}`}var J$=({key:t})=>`money ${t}`;function Q$(){if(!Oe())return u;let t=zS(va());return!fn()&&t.some(e=>a.open.has(`folded studio ${J$(e)}`))&&fa(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${US()}
    <div class="folds">
      ${t.map(e=>P({of:"studio",name:J$(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var US=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${To({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,To=t=>f({...t,of:"studio"}),Qa=t=>re("studio",t).map(ft).join(", "),G$=t=>["/work",t].join("/");function zS(t){let e=(i,s,l={})=>To({label:s,at:i,told:t,short:!0,...l}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let l=O("studio",i);return l&&`${l}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste"],told:Qa("/packs"),body:()=>H$(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Qa("/sellers"),body:()=>VS(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:Qa("/have"),body:z$},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(fi).map(i=>ft(String(w(i,"/material")))).join(", "),body:QS},{key:"work",title:"Work",pointers:["/work"],told:o(G$("paid_an_hour"),` ${t} an hour`),body:()=>YS(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:ZS},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${To({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Qa("/asking"),body:()=>XS(e)}]}var JS=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((l,{from:d},c)=>d===t?D(l,`/packs/${Y(i)}/${c}/from`,n):l,o),e);function VS(t){let e=(n,o)=>`/sellers/${Y(n)}/${o}`;return r`${re("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Ms("studio","/sellers",n)}
        </div>
        <div class="row">
          ${pc({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:JS(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${To({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${cc({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>et("studio",e(n,"postage"))})}`}var fi={of:"studio",at:"/packaging"},KS=t=>!en().includes(t)&&!a.fats.some(e=>e.id===t);function QS(){let t=e=>k(fi).some(n=>w(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(fi).map((e,n)=>GS(String(w(e,"/material")??""),n))}
    ${Os({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>re("studio",e)).filter(KS),taken:t,take:e=>I(fi,{material:e,each_piece:""},e)})}`}function GS(t,e){let n=xo(t)!==void 0||g("studio",`/prices/${Y(t)}`)!==void 0;return r`<div class="row" id=${L(fi,e)}>
    ${To({label:`${ft(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>Ka(t)}>
            Say its price
          </button>`}
    ${q(fi,e,t)}
  </div>`}function YS(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(G$("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${Ua()}
    </div>
    ${E("studio","/work")}`}var V$=(t,e)=>S({of:"studio",question:t,at:`/tax/${e}`,chosen:O("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),ZS=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Ae({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${To({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${V$("The prices you pay are","prices_paid")} ${V$("The prices you ask are","prices_asked")}`})}`,K$=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function XS(t){let e=n=>`/asking/${Y(n)}`;return r`${re("studio","/asking").map(n=>t1(n,e(n),t))}
  ${cc({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>et("studio",e(n))})}
  ${e1(t)}`}function t1(t,e,n){let o=g("studio",e)??{},i=K$.map(([l])=>l).find(l=>o[l]!==void 0),s=l=>To({label:l,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Ms("studio","/asking",t)}
    </div>
    <div class="row">${pc({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${S({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:K$,puts:l=>({[l]:""}),then:l=>`${e}/${l}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Fs={of:"studio",at:"/price_endings"},e1=t=>r`<p class="question">A price ends in</p>
    ${k(Fs).map((e,n)=>r`<div class="row" id=${L(Fs,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${q(Fs,n,`ending ${n+1}`)}
        </div>`)}
    ${Q(Fs,"Add an ending",()=>I(Fs,"","An ending"))}`;var n1=t=>nt()&&xo(t)===void 0&&li().length>0;function Y$(){if(!Oe())return r`<button type="button" @click=${o1}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${Y(e)}/${n}`;return{run:ya.run+o,studio:ya.studio+o}};return r`<div class="row">
      ${At(tn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${en().map(e=>xo(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${At(t(e,"paid"),{label:`${ft(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${At(t(e,"for"),{label:`for how much ${ft(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${n1(e)&&Ye(t(e,"paid"))?N$(e):u}
            </div>`:U$(e))}
    </div>
    ${en().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function o1(){let t=nt()?"studio":"run",e=t==="studio"?tn.studio:tn.run;B(t,"Prices added",e,"",et(t,e))}var hi=t=>({run:t,studio:t}),fc=t=>({run:`/pipe/${t}`,studio:`/${t}`}),i1=hi("/scales"),Z$=hi("/spoilage"),s1=hi("/pots");function hc(t){return Qt({name:"studio",title:"My studio",result:mt(r1()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>a1(t)})}function r1(){let t=a.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function a1(t){let e=l1(t),n=[...e.flatMap(o=>o.all),...Kt()?[Xr]:[]];return r`${nt()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Nu(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${jn(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${nt()?r`${Q$()} ${W$()}`:u}`}function l1(t){let e=ne(),n=[{title:"Scales",all:[i1],body:u1},{title:"Losses",all:[ac("pour"),...e?[ac("pipe")]:[]],body:()=>d1(e,t)},{title:"Rejects",all:[Z$],body:p1},{title:"Pot and lye jug",all:[s1],body:m1},{title:"Moulds owned",all:X$().map(({shared:o})=>o),body:h1},{title:"Prices paid",all:li(),body:Y$}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(fc),body:f1},{title:"Weigh-cups",all:[],body:Xh}),nt()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[mi],body:tc}),n}function u1(){let t=(e,n)=>r`${At(hi(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${At(hi(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function d1(t,e){return r`<div class="row">
      ${lc("pour",t?"Base":void 0)} ${t?lc("pipe","Topping"):u}
    </div>
    ${e?c1(e):u}`}function c1({pour:t,pipe:e,...n}){let o=ct({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:l,lost_g:d})=>`${s}: ${A(C(a.units,l))} in the pieces, ${A(C(a.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var p1=()=>At(Z$,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function m1(){let t=(e,n,o)=>At(hi(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function f1(){let t=(n,o,i,s=!1)=>At(fc(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>Ye(fc(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function X$(){return["/pour",...k(Tt).map((e,n)=>pi(n))].flatMap(e=>{let n=O("run",`${e}/mould`);return n?[{mould:n,shared:{run:I_(e),studio:`/moulds_owned/${Y(Uu(n))}`}}]:[]})}function h1(){return r`<div class="row">
    ${X$().map(({mould:t,shared:e})=>{let n=a.files?.moulds.find(s=>s.file===t)?.name??t,o=Ye(e)===void 0?sc(t):void 0,i=()=>{L$(t,`/moulds_owned/${Y(Uu(t))}`)};return r`${At(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&nt()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function gc(t){let e=t&&ei(t);return r`${_1(t)}
    <div class="set-up">${tw(e)} ${g1()} ${hc(e)}</div>`}function tw(t){return r`${x$(t)} ${ne()?R$(t):u}
  ${l$()?c$(t):u} ${u$()?m$(t):u}
  ${Kt()?_$(t):u} ${M$(t)} ${Xd()?$$(t?.whole):u}`}function g1(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${ne()?u:r`<button type="button" @click=${tg}>Add a topping</button>${eg()}`}
      ${Q_()} ${og()}
      ${Xd()?u:r`<button type="button" @click=${X_}>Draft the label</button>`}
    </div>
  </section>`}function ew(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${ti("Mould","/pour/mould",a.files?.moulds)}
    ${ti("Base","/pour/formula",a.files?.formulas)}
    ${ne()?ti("Topping","/pipe/formula",a.files?.formulas):u} ${t}
  </div>`}function _1(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?r`<p class="aside">${a.run.now.note}</p>`:u}
    ${ew(t?$1(t):u)}
    <div class="batches">${t?e$(t):u} ${Yd()}</div>
  </section>`}function $1(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:l}=t.pieces,d=Bt(t)?`${l} batches, ${z(o,"filling")}`:Er(o,i);return M({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function w1(){let e=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(b1);return[pe({part:"Run"},()=>[ew(),Yd()]),...e.map(n=>pe({part:String(a.formulas[n].now.name||"Formula")},()=>Ig(n))),tw(),hc()]}var b1=(t,e,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[t])===e;th(w1);var y1={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function nw(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(l=>r`<li class=${l.severity}><strong>${y1[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function ow(t,e){let n=t?.batches.findIndex(({numbers:l})=>l.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function gi(t){let e=Eo(t);return e?.finished_at?"done":e||Io(t)?"under way":"not begun"}var v1=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:t})=>t));function k1(t){let{chosen:e}=a.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>gi(s)===i);return o("under way")??o("not begun")??1}function _c(){let t=v1(),e=k1(t),n=Eo(e),o=ow(a.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?ow(n.plan,e):o}}var bn=({kept:t})=>!t&&a.is_old,_i=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var x1=6,T1={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function sw({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${gi(i)}`;return e>x1?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>iw(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:st("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${T1[gi(i)]}</span> ${i}<small>
          ${gi(i)}</small
        >`]),i=>iw(Number(i)))}function iw(t){km(t),j(`Batch ${t}, ${gi(t)}`)}var Ga="";function rw(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return R1(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!mo(n,l).is_done).length,s=()=>i?aw(e.id):void Il(n);return r`<div class="batch-end">
    <p class="aside">Begun ${uw(e.begun_at)}; its weights stay as they were then.</p>
    ${Ga===e.id?lw(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Il(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Io(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function R1({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${uw(n)}.</p>
    ${Ga===o?lw("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Li(e)}):r`<button type="button" @click=${()=>aw(o)}>Start this batch anew</button>`}
  </div>`}function aw(t){Ga=t,V(),Z(H("batch-stays"))}function lw(t,e,n){let o=()=>{Ga="",V(),Z(H("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var S1=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),uw=t=>S1.format(new Date(t));var A1={pour:"Base",pipe:"Topping"},dw=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function cw(t,e){let[n,o]=[dw(t),dw(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,l=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${A1[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var $c=3,wc=new Map,bc="";function D1(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=a;if(s&&!Oc(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:J(s)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=cw(n.vessels,o.vessels),d=new Set(_i(n).map(({text:p})=>p)),c=_i(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function pw(t){let e=D1(t),{kept:n}=t;if(!e||!n)return u;if(wc.get(n.id)===e.mark)return M1(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${P1(e)}
    </p>
    ${O1(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${ke}</strong> As it is now: ${i}</p>`)}
    ${bc===n.id?L1(t):F1(t,e)}
  </div>`}function P1({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-$c;return r`${t.slice(0,$c).join("; ")}${n>0?` and ${n} more.`:"."}`}var O1=({told:t})=>t.length>$c?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function M1(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(wc.delete(t),V())}>What has changed</button>
  </div>`}function F1(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{wc.set(o,e),V(),Z(H("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>C1(t)}>Start this batch anew</button>`:u}
  </div>`}function C1(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Li(t.number);bc=o,V(),Z(H("keep-weighing"))}function L1(t){let e=Object.keys(t.kept.ticks).length,n=()=>{bc="",V(),Z(H("run-title"))},o=()=>{n(),Li(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var mw=({text:t})=>r`<p class="danger"><strong>${ke}</strong> ${t}</p>`;function fw(t){let e=new Set(a.dangers.run.map(({text:o})=>o)),n=_i(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(mw)}</div>`:u}var W1=({vessel:t})=>["lye","lye_pot","share"].includes(t),B1=({batter:t},e)=>!t||!e.batter||t===e.batter;function hw(t,e){if(!W1(e))return u;let n=_i(t).filter(o=>B1(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${mw(o)} ${E1(o)}`)}</div>`:u}function E1({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${j1}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>I1(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function I1(t){Jt(t),requestAnimationFrame(()=>Z(et(t,"/superfat")))}function j1(){h({view:"watch"}),Z(H("watch-title"))}var yc=(t,e)=>r`<p class="do ${bn(t)?"old":""}">${e}</p>`;function gw(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${A(kt(a.units,o))} below the brim`;return yc(t,r`${s}, <b>${A(C(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function _w(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?yc(t,r`Whip until the level weigh-cup holds <b>${A(C(a.units,n.net_g))}</b>.`):u}function $w(t,{batch:e}){let{pipe:n}=e;return n?yc(t,r`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${A(C(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function ww(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Ne(n)===o?n:e,""]}function bw(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return H1(t,e,n);let o=q1(t,e,n);return o===void 0?void 0:{place:o}}function q1({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return vw(i,s,t,n);case"layers":return U1(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return vc(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:vc(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===e.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return N1(i,s,t,n)}}function H1({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:l})=>({name:s,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var yw=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function N1(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,yw(t)),s=t.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:vw(t,e,n,o,"lye")}function vc(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function vw(t,e,n,o,i=t.vessel){let s=yw(t),[l,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function U1(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:vc(t.name,e[o].colours,`${n}.${o}.colours`)}function kc(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>mo(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${kw(n)}>
    <div class="vessel-head">
      <h3 id=${kw(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${hw(e,n)}
    ${qr(n.rows,({key:s})=>s,s=>z1(t,e,n,s))}
  </section>`}var kw=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function z1(t,e,n,o){let{is_done:i,is_waiting:s}=mo(t.number,o.key),[l,d]=ww(a.units,o),c=bn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${F(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>J1(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${V1(t,e,n,o)}
  </div>`}function J1(t,{mark:e},n,o){if(!bn(t))return bm(t.number,e,n.key,o.checked);o.checked=!o.checked,j("Not ticked: what is struck through is not to be weighed.")}function V1(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&s&&bw(i,s,o);if(!l)return u;let d=`weigh.${t.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>It("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in l?fu(l.place):Pr(l.working)}</div>`:u}`}function xc(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function xw(t,e){let{planned:n,whip_today:o}=a;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||K1(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Tc=!1;async function K1(t,e){let{planned:n}=a;if(Tc||!n)return;Tc=!0;let o={of:n,batch:t,reading:e},i={holds:w(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Ws({...n,run:D(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...Q1(s,t)}})}catch(s){if(!(s instanceof y))throw s;h({whip_today:{...o,complaint:J(s.complaint)}})}finally{Tc=!1}}function Q1(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Sc,Rc,G1=t=>Sc??(Ne(t)==="oz"||!t&&a.units==="us"?"oz":"g");function Tw(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=Bl(t.number),i=G1(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${mn("weigh_cup")}</div>
    ${Te("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${F(Rc??o)}
        ?disabled=${s}
        @input=${l=>Rc=l.target.value}
        @change=${l=>Z1(t,e,l.target.value,i)}
      />
      ${st("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],Y1)}
    </div>
    ${X1(t,e,n,o)} ${eA(e,n)}
  </div>`}function Y1(t){Sc=t,V()}function Z1(t,{mark:e},n,o){Rc=void 0;let i=Ue(n)?`${n.trim()} ${o}`:n.trim();if(Sc=void 0,i===Bl(t.number))return V();if(bn(t))return j("Not taken: the weights are not those of what is typed."),V();ym(t.number,e,i)}function X1(t,e,n,o){if(!o)return u;let i=xw(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,l)=>r`<p>${tA(s,i.pieces?.[l]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function tA({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${z(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function eA(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
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
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${A(C(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Cs="pour",Rw=()=>_c().kept!==void 0;function Sw(){sr();let t=_c(),e=a.bench.version!==void 0||a.bench.failed!==void 0;return r`<section class="weighing" data-part=${Cs} aria-labelledby="run-title">
    ${nA(t)} ${iA(t)}
    ${t.weights&&e?r`${fw(t.weights)} ${pw(t)} ${sA(t,t.weights)}`:u}
    ${rw(t)}
  </section>`}function nA(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(a.run.now.name??"")}</h1>
    ${e?r`<p class="which">${oA(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${sw(t)}
    </div>
  </div>`}function oA(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>mo(t.number,d).is_done).length,l=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${l}${Qe(e,n)}</b>, ${s} of ${i.length} weighed`}function iA({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:l}=a.bench,d=o!==void 0&&Io(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${xm}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function sA(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),l=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>kc(t,e,m));return r`${cA(d,i)}
    <div class="batters ${d?"two":""}">
      ${Ya("ahead","To have ready",c(s))}
      ${Ya("base",d?"Base":"Batter",rA(t,e,o("pour"),s))}
      ${d?Ya("topping","Topping",[...c(o("pipe")),uA(t,e),xc(o("pipe"),lA(t,e))]):u}
      ${Ya("after","At the end",c(l))}
    </div>`}var Ya=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function rA(t,e,n,o){let i=({vessel:l})=>l==="layers",s=l=>l.map(d=>kc(t,e,d));return[...s(n.filter(l=>!i(l))),gw(t,e),...s(n.filter(i)),xc([...o,...n],aA(t,e))]}var Aw=(t,e,n=u)=>r`<p class=${bn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>ce(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,aA=(t,{batch:e})=>Aw(t,[e.pour],Bn("superfat_as_weighed")),lA=(t,{batch:e})=>Aw(t,e.pipe?.whippings??[]),uA=(t,e)=>r`${_w(t,e)} ${Tw(t,e)} ${$w(t,e)}`,dA={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function cA(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>dA[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Cs)||(Cs="pour"),r`<div class="narrow">${st("What is shown",Cs,o,pA)}</div>`)}function pA(t){Cs=t,V(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Dw=()=>r`${ri(Rw()?"No new weights can be given.":void 0)} ${Sw()}`;var mA={"set-up":gc,watch:nw,money:O_,days:A_,mould:L_,print:E_};function Pw(t){let e=r`${tr().map(o=>Ve(o))} ${Xs().map(Ke)}`;if(t==="weigh")return r`${e} ${Dw()}`;let{plan:n}=a;return r`${e} ${ri()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?mA[t](n):fA(t)}`}function fA(t){return a.complaint?t==="set-up"?gc():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var hA=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Mw(){let t=a.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${hA}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=ta(t.sell),s=e.trim()&&n&&o&&i,l=()=>{rt(async()=>{await wr({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${F(e)}
          @input=${d=>b(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Ow(t,"mould","Mould",gA())} ${Ow(t,"formula","Base",_A())}
      ${ea("new-run-sell",t.sell,d=>b(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var gA=()=>[...(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...a.catalogue.map(t=>[t.path,t.name])],_A=()=>(a.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Ow(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>b(t,{[e]:l.target.value})}>
      <option value="" .selected=${F(t[e]==="")}>choose ...</option>
      ${o.map(([l,d])=>r`<option value=${l} .selected=${F(l===t[e])}>${d}</option>`)}
    </select>
  </div>`}var $A=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Cw(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped).sort($A),n=t.filter(o=>o.shipped);return r`${he("Runs")} ${Mw()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Pe(e,Fw):r`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Pe(n,Fw)}
    </section>
    ${ge("run")}`}function Fw(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,l=[e===void 0?"":z(e,"piece"),n??"",o?`due ${gt(o)}`:"",i?`made ${gt(i)}`:s?`changed ${gt(s)}`:""].filter(Boolean);return Ge({kind:oo,one:t,facts:l,picture:wA(n),open:()=>je(t.file)})}var wA=t=>a.files?.moulds.find(e=>e.name===t)?.file??a.catalogue.find(e=>e.name===t)?.path;function Lw(){let t=On();return r`${he("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Hr(xn,"Each file is named by the studio, or by the runs that use its tips.",e=>Ei(xn,e))}
      ${t?_h(t):u}
      ${Nr({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(bh(e)):mr(xn,Tu(e)),tried:rt})}
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
          ${zi().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${ge("tips")}`}var Ew=document.getElementById("page");function Iw(){let{view:t,fault:e}=a;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${R_()} ${Lf()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${a.is_old&&!ae(t)&&t!=="order"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${yA()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var bA={runs:Cw,orders:w_,formulas:qg,moulds:Hg,fats:Dh,tips:Lw};function yA(){let{view:t,fault:e}=a;return nn(t)?Pw(t):ae(t)?bA[t]():t==="formula"?Eg():t==="order"?$_():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}kp(()=>{Sg(),le(Iw(),Ew),xA()});le(Iw(),Ew);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ae(a.view)&&!a.mould)return;t.preventDefault();let{undo:e,redo:n}=La();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return df();ln()});function vA(){if(!a.run.file)return Ac();h({fault:void 0}),ln(),at()}function Ac(){h({fault:void 0}),Lg().catch(t=>{h({fault:kA(t)}),t instanceof y&&t.may_pass&&window.setTimeout(Ac,2e3)})}function kA(t){return t instanceof y&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var Ww=new ResizeObserver(([{target:t}])=>jw(t.offsetHeight)),Bw=null;function xA(){let t=document.querySelector(".foremost");t!==Bw&&(Ww.disconnect(),t?Ww.observe(t):jw(0),Bw=t)}var jw=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Mf();Cg();Pc(t=>{si(),t&&vA()});Ac();
