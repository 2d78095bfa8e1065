import{A as ip,B as sp,C as Ee,D as rp,E as ap,F as lp,G as it,H as wt,I as up,J as dp,K as ce,L as ln,M as Oi,N as Ie,O as dl,P as cp,Q as pp,S as mp,T as fp,U as hp,a as Hc,b as Nc,c as Q,d as v,e as Uc,f as zc,g as Si,h as Vs,i as Mt,j as Oo,k as Jc,l as Vc,m as Di,n as Kc,o as Qc,p as Ai,q as Gc,r as Yc,s as Ks,t as Zc,u as Xc,v as tp,w as ep,x as np,y as Tn,z as op}from"./chunk-NOD6VTU6.js";var Qs=globalThis,Ys=Qs.ShadowRoot&&(Qs.ShadyCSS===void 0||Qs.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,_p=Symbol(),gp=new WeakMap,Gs=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==_p)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Ys&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=gp.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&gp.set(n,e))}return e}toString(){return this.cssText}},$p=t=>new Gs(typeof t=="string"?t:t+"",void 0,_p);var wp=(t,e)=>{if(Ys)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Qs.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},cl=Ys?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return $p(n)})(t):t;var{is:ub,defineProperty:db,getOwnPropertyDescriptor:cb,getOwnPropertyNames:pb,getOwnPropertySymbols:mb,getPrototypeOf:fb}=Object,Zs=globalThis,bp=Zs.trustedTypes,hb=bp?bp.emptyScript:"",gb=Zs.reactiveElementPolyfillSupport,Pi=(t,e)=>t,pl={toAttribute(t,e){switch(e){case Boolean:t=t?hb:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},vp=(t,e)=>!ub(t,e),yp={attribute:!0,type:String,converter:pl,reflect:!1,useDefault:!1,hasChanged:vp};Symbol.metadata??=Symbol("metadata"),Zs.litPropertyMetadata??=new WeakMap;var un=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=yp){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&db(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=cb(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let d=i?.call(this);s?.call(this,a),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??yp}static _$Ei(){if(this.hasOwnProperty(Pi("elementProperties")))return;let e=fb(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Pi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Pi("properties"))){let n=this.properties,o=[...pb(n),...mb(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(cl(i))}else e!==void 0&&n.push(cl(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return wp(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:pl).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:pl;this._$Em=i;let d=a.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??vp)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,d=this[i];a!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};un.elementStyles=[],un.shadowRootOptions={mode:"open"},un[Pi("elementProperties")]=new Map,un[Pi("finalized")]=new Map,gb?.({ReactiveElement:un}),(Zs.reactiveElementVersions??=[]).push("2.1.2");var fl=globalThis,kp=t=>t,Xs=fl.trustedTypes,xp=Xs?Xs.createPolicy("lit-html",{createHTML:t=>t}):void 0,hl="$lit$",dn=`lit$${Math.random().toFixed(9).slice(2)}$`,gl="?"+dn,_b=`<${gl}>`,no=document,Fi=()=>no.createComment(""),Ci=t=>t===null||typeof t!="object"&&typeof t!="function",_l=Array.isArray,Op=t=>_l(t)||typeof t?.[Symbol.iterator]=="function",ml=`[ 	
\f\r]`,Mi=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Tp=/-->/g,Rp=/>/g,to=RegExp(`>|${ml}(?:([^\\s"'>=/]+)(${ml}*=${ml}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Sp=/'/g,Dp=/"/g,Pp=/^(?:script|style|textarea|title)$/i,$l=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=$l(1),S=$l(2),_A=$l(3),Ft=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Ap=new WeakMap,eo=no.createTreeWalker(no,129);function Mp(t,e){if(!_l(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return xp!==void 0?xp.createHTML(e):e}var Fp=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=Mi;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,w=0;for(;w<c.length&&(a.lastIndex=w,m=a.exec(c),m!==null);)w=a.lastIndex,a===Mi?m[1]==="!--"?a=Tp:m[1]!==void 0?a=Rp:m[2]!==void 0?(Pp.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=to):m[3]!==void 0&&(a=to):a===to?m[0]===">"?(a=i??Mi,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?to:m[3]==='"'?Dp:Sp):a===Dp||a===Sp?a=to:a===Tp||a===Rp?a=Mi:(a=to,i=void 0);let b=a===to&&t[d+1].startsWith("/>")?" ":"";s+=a===Mi?c+_b:_>=0?(o.push(p),c.slice(0,_)+hl+c.slice(_)+dn+b):c+dn+(_===-2?d:b)}return[Mp(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Li=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,d=e.length-1,c=this.parts,[p,m]=Fp(e,n);if(this.el=t.createElement(p,o),eo.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=eo.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(hl)){let w=m[a++],b=i.getAttribute(_).split(dn),k=/([.?@])?(.*)/.exec(w);c.push({type:1,index:s,name:k[2],strings:b,ctor:k[1]==="."?er:k[1]==="?"?nr:k[1]==="@"?or:io}),i.removeAttribute(_)}else _.startsWith(dn)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Pp.test(i.tagName)){let _=i.textContent.split(dn),w=_.length-1;if(w>0){i.textContent=Xs?Xs.emptyScript:"";for(let b=0;b<w;b++)i.append(_[b],Fi()),eo.nextNode(),c.push({type:2,index:++s});i.append(_[w],Fi())}}}else if(i.nodeType===8)if(i.data===gl)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(dn,_+1))!==-1;)c.push({type:7,index:s}),_+=dn.length-1}s++}}static createElement(e,n){let o=no.createElement("template");return o.innerHTML=e,o}};function oo(t,e,n=t,o){if(e===Ft)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Ci(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=oo(t,i._$AS(t,e.values),i,o)),e}var tr=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??no).importNode(n,!0);eo.currentNode=i;let s=eo.nextNode(),a=0,d=0,c=o[0];for(;c!==void 0;){if(a===c.index){let p;c.type===2?p=new Po(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new ir(s,this,e)),this._$AV.push(p),c=o[++d]}a!==c?.index&&(s=eo.nextNode(),a++)}return eo.currentNode=no,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Po=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=oo(this,e,n),Ci(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Ft&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Op(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Ci(this._$AH)?this._$AA.nextSibling.data=e:this.T(no.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Li.createElement(Mp(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new tr(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=Ap.get(e.strings);return n===void 0&&Ap.set(e.strings,n=new Li(e)),n}k(e){_l(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(Fi()),this.O(Fi()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=kp(e).nextSibling;kp(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},io=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=oo(this,e,n,0),a=!Ci(e)||e!==this._$AH&&e!==Ft,a&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=oo(this,d[o+c],n,c),p===Ft&&(p=this._$AH[c]),a||=!Ci(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},er=class extends io{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},nr=class extends io{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},or=class extends io{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=oo(this,e,n,0)??u)===Ft)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ir=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){oo(this,e)}},Cp={M:hl,P:dn,A:gl,C:1,L:Fp,R:tr,D:Op,V:oo,I:Po,H:io,N:nr,U:or,B:er,F:ir},$b=fl.litHtmlPolyfillSupport;$b?.(Li,Po),(fl.litHtmlVersions??=[]).push("3.3.3");var pe=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Po(e.insertBefore(Fi(),s),s,void 0,n??{})}return i._$AI(t),i};var wl=globalThis,Mo=class extends un{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=pe(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Ft}};Mo._$litElement$=!0,Mo.finalized=!0,wl.litElementHydrateSupport?.({LitElement:Mo});var wb=wl.litElementPolyfillSupport;wb?.({LitElement:Mo});(wl.litElementVersions??=[]).push("4.2.2");var Lp=()=>{},bl=!1;function Wp(t){Lp=t}function ot(){bl||(bl=!0,queueMicrotask(()=>{bl=!1,Lp()}))}function Bp(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var L=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of Bp(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function A(t,e,n){return yl(t,Bp(e),n)}function yl(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=yl(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},a=yl(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var Ep=t=>zc("GET",`/api/bench?run=${encodeURIComponent(t)}`),Ip=t=>Si("/api/bench/tick",t),jp=t=>Si("/api/bench/weigh_cup",t),qp=(t,e)=>Si("/api/bench/anew",{run:t,batch:e}),Hp=(t,e)=>Si("/api/bench/finish",{run:t,batch:e});var rt=(t,e)=>({name:t,label:e,unit:"mm"}),Rn=rt("height","Floor to brim"),sr={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},vl={block:{words:"Box, loaf or slab",measures:[rt("length","Longer side at the brim"),rt("width","Shorter side"),Rn,sr,{...rt("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[rt("floor_diameter","Across the floor"),rt("brim_diameter","Across the brim"),Rn]},fluted_cup:{words:"Fluted cup",measures:[rt("floor_diameter","Across the floor"),rt("brim_diameter","Across the brim"),Rn,{name:"flutes",label:"Flutes",unit:"",count:!0},rt("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},rt("across_flats","Across the flats"),Rn,sr]},dome:{words:"Bowl",measures:[rt("diameter","Across the brim"),Rn]},half_ball:{words:"Half ball",measures:[rt("diameter","Across the brim")]},ball:{words:"Ball",measures:[rt("diameter","Across")]},half_ring:{words:"Half ring",measures:[rt("centre_diameter","Ring, middle to middle of the tube"),rt("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[rt("outer_floor_diameter","Cup, across the floor"),rt("outer_brim_diameter","Cup, across the brim"),rt("post_floor_diameter","Post, at its foot"),rt("post_brim_diameter","Post, at its top"),Rn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[rt("height","Height"),rt("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Rn,sr],points:{columns:[rt("x","From the left"),rt("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[rt("side","Straight edge, tip to round"),Rn,sr]}},Np=Object.fromEntries(Object.entries(vl).map(([t,{words:e}])=>[t,e])),Fo=t=>vl[t]?.measures??[],Sn=t=>vl[t]?.points;var kl=(t,e)=>String($(t,e)??"").trim(),Wi=t=>kl(t,"/shape/kind"),ve=(t,e)=>$(t,`/${e}`)!==void 0,xl=t=>["body","skin"].includes(kl(t,"/mesh/role"));function te(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Up(t,e){return(Sn(Wi(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Bi(t){return te(t,"/shape/points").flatMap((e,n)=>Up(t,e).every(Boolean)?[n]:[])}function rr(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return te(t,"/shape/points").flatMap((n,o)=>e(Up(t,n))?[o]:[])}var Tl=t=>te(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function zp(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=A(e,o,s)};return Sn(Wi(t))&&n("/shape/points",Bi(t)),n("/water/weighings",Tl(t)),e}function ar(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Bi(t):Tl(t);return`${n}/${s[Number(o)]??o}${i}`}function Ei(t){let e=[],n=i=>kl(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(ve(t,"shape")){let i=Wi(t);o(i!=="","the shape");for(let{name:a,label:d,optional:c}of Fo(i))o(c||n(`/shape/${a}`),d.toLowerCase());let s=Sn(i);s&&o(Bi(t).length>=s.least,`${s.least} points at least`)}if(ve(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Tl(t).length>0,"a weighing of water")}return!xl(t)&&!ve(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var Jt=t=>t.slice(0,t.lastIndexOf("/")+1),ee=t=>t.slice(t.lastIndexOf("/")+1),cn=(t,e)=>{let n=Jt(t);return n?bb(n+e):e};function bb(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function ke(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Co(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var yb=["mould","formula","run","file","own_fats","own_tips"];function Rl(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Rl(o,i):yb.includes(n)?[i]:[]})}function Sl(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Rl(t)])[n,o]=[A(n,i,void 0),A(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Dl(t,e){let n=["/id",...Rl(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?A(i,s,$(e,s)):i,o)}var so={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?ee(e):ke(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},ro={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>ke(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Lo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?ee(e):ke(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Al=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>ee(o),written:o=>o,is_begun:()=>!0}),Ii=Al("studio","studios","name"),je=Al("fats","fats"),Dn=Al("tips","tips","title"),Vt={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>ke(String(t.name),".json"),written:t=>({...zp(t),name:String(t.name??"").trim()}),is_begun:t=>ve(t,"shape")||ve(t,"mesh")};var Jp={},Vp={kind:so,id:"",file:"",version:null,shipped:!1,now:Jp,saved:Jp,unanswered:[]},Ct={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Vp,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(xb()),folded:new Set,units:vb(),announcement:""},l=Ct;function vb(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Ol=t=>`numbers ${String(t.now.id??t.file)}`,kb=t=>({numbers:localStorage.getItem(Ol(t))??void 0,figure:""});function ji(t){h({quote_wish:{...Ct.quote_wish,...t}});let{numbers:e}=Ct.quote_wish;e?.trim()?localStorage.setItem(Ol(Ct.run),e):localStorage.removeItem(Ol(Ct.run))}var Kp="set-up ";function xb(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function Tb(){let t=[...Ct.open].filter(e=>e.startsWith(Kp));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(Ct,t),ot()}var q=t=>h({announcement:t});function y(t,e){Object.assign(t,e),ot()}function qe(t,e){let{[t]:n,...o}=Ct.formulas;h({formulas:e?{...o,[t]:e}:o})}function qt(t,e){let n=new Set(Ct[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Kp)&&Tb()}function Wo(t=Vp){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:kb(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function at(t){Ct.open.has(t)||h({open:new Set(Ct.open).add(t)})}function ao({list:t,called:e},n,o={}){if(!Ct.files)return;let i=Ct.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Ct.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},a=Ct.files[t].filter(d=>d.file!==n);a.splice(i<0?a.length:i,0,s),h({files:{...Ct.files,[t]:a}})}var Rb=1e4,Pl=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Pl);var lr=[],Bo=()=>`bench ${l.files?.folder??""}`;function ne(){try{return[...JSON.parse(localStorage.getItem(Bo())??"[]"),...lr]}catch{return lr}}function Ml(t){try{t.length?localStorage.setItem(Bo(),JSON.stringify(t)):localStorage.removeItem(Bo()),lr=[]}catch{lr=t}}var Sb=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function Qp(t){let e={...t,id:crypto.randomUUID(),tab:Pl,at:Date.now()};Ml([...ne().filter(n=>!Sb(n,e)),e])}var ur=t=>Ml(ne().filter(e=>!t(e))),Gp=(t,e)=>Ml(ne().map(n=>n.run===t?{...n,run:e}:n)),Fl=()=>ne().find(t=>t.tab===Pl||Date.now()-t.at>Rb);var pt=["pour","pipe","apart"],bt=["studio","own_fats","own_tips"],dr=t=>bt.includes(t);var Cl=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],Ll=()=>bt.flatMap(t=>l.beside[t]??[]),Yp=t=>t.filter(e=>e.theirs),pn=t=>Yp([...Cl(t==="apart"?["apart"]:["pour","pipe"]),...Ll()])[0],cr=()=>[l.run,...Cl(pt),...Ll()].filter(t=>t.is_taken&&!t.theirs),pr=()=>Yp([l.run,...Cl(pt),...Ll()]);var qi=()=>l.formulas.apart?"apart":"run",Zp=t=>h({dangers:{...l.dangers,[qi()]:t}});function Wl(t){let e=t.cautions.filter(n=>n.severity==="danger");Zp(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Xp(t){t.lye_heavy&&Zp([{text:Q(t),is_of_heat:!1}])}var tm={};function xe(t,e){(tm[t]??=[]).push(e)}function kt(t,e){for(let n of tm[t]??[])n(e)}async function me({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:a}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:w=[],tips:b=[]}=l.files??{},k=Co(e,[...d,...c,...p,...m,..._,...w,...b]);s?.(k);let z=await Db({file:k,version:null,text:n,from:o,goes_on:i});if(ao(t,k,wt(z.there.text)??{}),z.is_new||a?.(z.there))return z.there}}async function Db(t){try{return{is_new:!0,there:await Oo(t)}}catch(e){if(!(e instanceof v)||e.status!==409)throw e;return{is_new:!1,there:e.answer}}}var mr=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function lo({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:it(s),copy:a};localStorage.setItem(mr(t)+e,JSON.stringify(d))}catch{}}function Bl(t,e){try{return JSON.parse(localStorage.getItem(mr(t)+e)??"null")??void 0}catch{return}}var An=(t,e)=>localStorage.removeItem(mr(t)+e),em=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function fr(t){let e=mr(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Bl(t,o)??[])}var Ab=300,J=t=>t.now!==t.saved;function uo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Lt(t,e,n=e){let o=await fp(e),i=Ob(t,JSON.parse(o.text),o.shipped),s=Bl(t,n),a=s?.copy&&o.shipped?await Pb(t,s,i):void 0;if(a)return An(t,n),Lt(t,a);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Mb(p,s,o),p}var Ob=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Pb(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=wt(e.text),i=wt((await Mt(e.copy)).text);if(!(!o||!i||it(o)===it(n)))return Sl(t.written(o),i)?e.copy:void 0}function Mb(t,e,n){let o=wt(e.text);if(!o||it(o)===it(t.now))return An(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),um(t,n))}function Rt(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),lo(t),kt("edited",{file:t,before:n})}var nm=new WeakMap,El=async t=>nm.get(t),He=t=>om(t,()=>Fb(t)),Eo=t=>om(t,()=>t.shipped?im(t,sm):Promise.resolve());function om(t,e){let n=El(t).then(e);return nm.set(t,n.catch(()=>{})),n}async function Fb(t){!J(t)||t.theirs||await im(t,t.shipped||!t.file?sm:rm)}async function im(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:Q(n.complaint)}),n}}async function sm(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await me({kind:e,name:e.new_name(t),text:it(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>lo(t,m),is_own:({text:m})=>i!==void 0&&Sl(s,wt(m)??{})}),d=JSON.parse(a.text),c=Dl(s,d),p=t.now===o?d:c(t.now);An(e,n),y(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:d}),J(t)&&lo(t),i!==void 0&&kt("copied",{file:t,from:i,renamed:c})}async function rm(t){let{version:e,now:n}=t,o=it(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{hr(t,n,(await Oo({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;am(t,i.answer),J(t)&&!t.theirs&&await rm(t)}}function hr(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),J(t)?lo(t):An(t.kind,t.id),ao(t.kind,t.file,e)}function am(t,{version:e,text:n}){if(n===it(t.kind.written(t.now)))return hr(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=J(t)||t.theirs?void 0:wt(n);i?Cb(t,i,e):um(t,{version:e,text:n})}function Cb(t,e,n){kt("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),hr(t,e,n),q(`${t.file} was changed outside this page, and stands here as it is now.`),kt("gave_way",{file:t})}var lm=t=>y(t,{set_aside:void 0,is_taken:void 0});function um(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),lo(t),q(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),kt("conflict",{file:t})}function dm(t){if(!t.theirs)return;let e=wt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}kt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),hr(t,e,t.theirs.version),kt("gave_way",{file:t})}function cm(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),lo(t),kt("unwritten",{file:t}))}var co=({theirs:t})=>t?.text===null;function pm(t){co(t)&&(An(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),q(`${t.file} stays deleted.`),kt("left_deleted",{file:t}))}function mm(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;Rt(t,e),y(t,{set_aside:o?void 0:n})}var fm=t=>(t.theirs??t).version;function hm(t,e){y(t,{id:e,file:e}),kt("renamed",{file:t,renamed:n=>n})}async function gm(t){let{version:e,text:n}=await Mt(t.file),o=wt(n);if(!o||t.theirs||e===t.version)return;let i=Dl(t.now,o);if(J(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),kt("renamed",{file:t,renamed:i})}var _m=t=>t.shipped||!t.file?[]:[[t.file,fm(t)]];async function Il(t,e,n,o){let i=t.file,s=()=>fm(t)===e&&t.file===i;if(!s()||(await El(t),!s()))return!1;o(),await jl();let a=await Lb(i,n);return await El(t),s()&&(am(t,a),J(t)&&!t.theirs&&kt("unwritten",{file:t})),!0}async function Lb(t,e){let n=await e(t);return n===null?{version:n,text:null}:Mt(t)}var jl=()=>new Promise(t=>setTimeout(t,Ab));var Wb=400,Bb=2e3,Hl=new WeakMap;function wm(t,e){clearTimeout(Hl.get(t)),Hl.set(t,window.setTimeout(()=>{Ne(t)},e))}var On=(t=l.run)=>wm(t,Wb),Eb=t=>t===l.run||t===l.order?.open;async function Ne(t=l.run){clearTimeout(Hl.get(t));try{await He(t),J(t)&&!t.theirs&&Eb(t)&&On(t)}catch(e){if(!(e instanceof v))throw e;e.may_pass&&wm(t,Bb)}}async function mn(){for(let t of[l.run,l.order?.open])t?.file&&J(t)&&await Ne(t)}var $m=Promise.resolve(),ql=0;function Ue(){if(!ql&&!Ib().length)return;++ql;let t=$m.then(jb).finally(()=>--ql);return $m=t.catch(()=>{}),t}var Ib=()=>[...pt.map(t=>l.formulas[t]),...bt.map(t=>l.beside[t])].filter(t=>t!==void 0&&J(t)&&!t.theirs);async function jb(){for(let t of pt){let e=l.formulas[t];!e||!J(e)||e.theirs||(e.shipped&&t!=="apart"&&await Eo(l.run),await He(e))}for(let t of bt){let e=l.beside[t];e&&J(e)&&!e.theirs&&await He(e)}}var Te=t=>cn(l.run.file,t);function Kt(t,e){let n=Te(t);return e?.some(o=>o.file===n)?n:t}function bm(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Kt(String(n?.mould??""),l.files?.moulds);return{file:Co("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...qb(e)}}}function qb(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var Pn=({lines:t})=>Array.isArray(t)?t:[];function fn(t){let e=Pn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Re=new Map,Hi=new Set,Hb={changed:{},unreadable:[]},Io=()=>new Set([...pt.flatMap(t=>l.formulas[t]??[]),...bt.flatMap(t=>l.beside[t]??[])]);function jo(){let t=Ub(),e=new Set([...Io()].map(({file:o})=>o));for(let o of Re.keys())!t.has(o)&&!e.has(o)&&Re.delete(o);for(let o of Hi)t.has(o)||Hi.delete(o);let n=[...t].filter(o=>!Re.has(o));return n.length?Nb(n):void 0}async function Nb(t){for(let[e,n]of await ym(t))Re.has(e)||Re.set(e,n)}async function ym(t){let e=t.filter(o=>!Hi.has(o)),n=e.length?await Ai(new Map(e.map(o=>[o,null]))):Hb;return zl(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Nl=async t=>(await ym([t])).get(t)??null,Ul=()=>new Map([...Re].filter(([t])=>!Hi.has(t)));function Ub(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(Te(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(Te("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Io()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Jt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of zb())t.add(o);for(let o of bt)t.delete(l.beside[o]?.file??"");return t}function zb(){let{open:t}=l.order??{},e=new Set(t?Pn(t.now).map(({run:p})=>cn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:a=[]}=l.files??{},d=[...n,...o,...i,...s,...a].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(cn(t.file,"studio.json")),e.delete(l.run.file),e}function vm(t,{changed:e}){let n=Object.keys(e).filter(o=>Re.has(o)&&Re.get(o)===t.get(o));for(let o of n)Re.set(o,e[o]);return n}var zl=t=>t.forEach(e=>Hi.add(e));function km(){return[...Io()].flatMap(({file:t,version:e})=>{let n=Re.get(t)??e;return Re.delete(t),n===e?[]:[t]})}var xm=0,po=()=>xm;function Jl(t){++xm,h({is_old:!0,changed_beside:t})}var Jb=1e3,Vb=450,gr=!1,mo=!1,Vl=0;function dt(){h({is_old:!0}),gr?mo=!0:qo()}async function qo(){if(gr){mo=!0;return}gr=!0,Tm(!1);try{do mo=!1,await Kb();while(mo)}finally{gr=!1,Tm(!0)}}async function Sm(){let{run:t}=l,e={file:t.file,run:t.now},n=await hp(e)?.catch(()=>{});!n||t!==l.run||l.plan||em()||(h({plan:n,planned:e}),Wl(n))}var Tm=t=>{document.documentElement.dataset.settled=String(t)};function Rm(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function Kb(){let t=Rm();try{let e=Ue();e&&await e;let n=jo();n&&await n,t=Rm();let{apart:o}=l.formulas;if(pn(o?"apart":"run"))return h({is_old:!0});let i=po(),s=o?bm(o.file):{file:l.run.file,run:l.run.now},a=await Ks(s);if(window.clearTimeout(Vl),!t())return void(mo=!0);h({plan:a,planned:s,complaint:void 0}),Wl(a);let d=i===po();h({is_old:mo||!d}),d&&h({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(mo=!0);Qb(e)}}function Qb(t){h({is_old:!0}),window.clearTimeout(Vl);let e=()=>{h({complaint:t.complaint}),Xp(t.complaint)};l.complaint||!l.plan?e():Vl=window.setTimeout(e,Vb),t.may_pass&&window.setTimeout(dt,Jb)}var Dm=2e3,oe=t=>h({bench:{...l.bench,...t}}),Gb=()=>oe({acts:ne()});addEventListener("storage",({key:t})=>{t===Bo()&&Gb()});function _r(){let{file:t}=l.run;!t||l.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:ne()}}),fo().then(Yl))}function Am(t){let{file:e}=l.run;Gp(t,e),l.bench.run===t&&oe({run:e,acts:ne()}),l.bench.run===e&&fo()}function $r(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var Ni=0;async function fo(){let{run:t}=l.bench,e=Ni;try{let n=await Ep(t);if(t!==l.bench.run)return;if(e!==Ni)return await fo();Om(n)}catch(n){if(!(n instanceof v))throw n;if(t!==l.bench.run)return;oe({failed:Q(n.complaint)}),Pm(n)&&setTimeout(()=>l.bench.failed!==void 0&&void fo(),Dm)}}var Om=({batches:t,version:e,complaints:n=[]})=>oe({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),Pm=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Ho=t=>l.bench.batches.find(e=>e.batch===t),Ql=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),No=t=>Ql(t).length>0;function ho(t,e){let n=Ql(t).find(i=>i.key===e),o=Ho(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Gl(t){let e=Ql(t).find(n=>n.reading!==void 0);return(e?e.reading:Ho(t)?.weigh_cup)??""}function Mm(t,e,n){let{run:o}=l.bench,s=Ho(t)!==void 0||!l.planned?void 0:it(l.planned.run);Qp({run:o,batch:t,seen:e,text:s,...n}),oe({acts:ne(),chosen:t,told:void 0}),Yl()}var Fm=(t,e,n,o)=>Mm(t,e,{key:n,done:o}),Cm=(t,e,n)=>Mm(t,e,{reading:n||null}),Kl=!1;async function Yl(){if(!Kl){Kl=!0;try{await navigator.locks.request(Bo(),Yb)}finally{Kl=!1}ne().length&&setTimeout(()=>{Yl()},Dm)}}async function Yb(){for(let t=Fl();t;t=Fl())if(!await Zb(t))return}async function Zb(t){let{id:e}=t;try{let n=await Xb(t);return++Ni,ur(o=>o.id===e),ty(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return Pm(n)?(oe({unsent:Q(n.complaint)}),!1):(await ey(t,n),!0)}}function Xb({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Ip({...d,key:i,done:s??!1}):jp({...d,reading:a??null})}function ty(t,e){let n=ne();if(e!==l.bench.run)return oe({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);oe({acts:n,batches:i,unsent:void 0})}async function ey(t,{complaint:e}){++Ni,ur(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${Q(e)}.`;oe({acts:ne(),unsent:void 0,told:{batch:t.batch,words:n}}),q(n),dt(),await fo()}async function Ui(t){let{run:e}=l.bench;await Lm(t,async()=>{let n=await qp(e,t);return ur(o=>o.run===e&&o.batch===t),n})}var Zl=t=>Lm(t,()=>Hp(l.bench.run,t));async function Lm(t,e){let{run:n}=l.bench;try{let o=await e();if(++Ni,n!==l.bench.run)return;Om(o),oe({acts:ne(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;oe({told:{batch:t,words:Q(o.complaint)}})}}var Wm=t=>oe({chosen:t,told:void 0}),Bm=()=>oe({told:void 0});var ny=300,oy=1200,wr="",Em=0;function zi(){let t={run:{file:l.run,now:l.run.now}};for(let e of pt){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of bt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function go(t=""){let e=performance.now();t&&t===wr&&e-Em<=oy&&l.past.length||Xl(zi()),h({future:[]}),wr=t,Em=e}var Xl=t=>h({past:[...l.past,t].slice(-ny)});function Uo(t){Xl(Im(zi(),t,()=>t.saved??{}))}function Im(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function tu(t,e){let n=o=>o.map(i=>Im(i,t,e));h({past:n(l.past),future:n(l.future)})}function Ji(){let t=l.past.at(-1);t&&(h({past:l.past.slice(0,-1),future:[...l.future,zi()]}),jm(t,"Undone"))}function eu(){let t=l.future.at(-1);t&&(h({past:[...l.past,zi()],future:l.future.slice(0,-1)}),jm(t,"Redone"))}function jm(t,e){wr="",h({typed:void 0});for(let n of[...bt,...pt,"run"])iy(n,t);q(e)}function iy(t,e){let n=e[t];if(dr(t))return sy(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&qe(t,n.file),n.file.now!==n.now&&Rt(n.file,n.now))}function sy(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&Rt(e.file,e.now)}var zo=t=>t===l.run||pt.some(e=>l.formulas[e]===t)||bt.some(e=>l.beside[e]===t);xe("giving_way",({file:t})=>{zo(t)&&(wr="",Xl(zi()),h({typed:void 0}))});for(let t of["copied","renamed"])xe(t,({file:e,renamed:n})=>tu(e,n));var ry=1200,nu="",qm=0;function Jo(t,e=""){let n=performance.now(),o=e&&e===nu&&n-qm<=ry&&t.past.length;y(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[nu,qm]=[e,n]}function br(t){let e=t.past.at(-1);e&&(y(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),Hm(t,e,"Undone"))}function yr(t){let e=t.future.at(-1);e&&(y(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),Hm(t,e,"Redone"))}function Hm({open:t},e,n){nu="",h({typed:void 0}),Rt(t,e),q(n)}function Mn(t){return t==="run"?l.run:t==="order"?l.order?.open:dr(t)?l.beside[t]:l.formulas[t]}var ay=t=>Mn(t)?.now,g=(t,e)=>$(ay(t),e),D=(t,e)=>String(g(t,e)??"");function tt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function mt(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Nm(t,e){t==="order"&&l.order?Jo(l.order,e):go(e===void 0?"":`${t} ${e}`)}function V(t,e,n){let o=Mn(t);!o||$(o.now,e)===n||(Nm(t,e),Rt(o,A(o.now,e,n)))}function Um(t,e){let n=Mn(t);n&&(Nm(t),h({typed:void 0}),Rt(n,e(n.now)))}function Se(t){go(),h({typed:void 0});for(let[e,n]of t){let o=Mn(e);o&&Rt(o,n(o.now))}}var ou=(t,e)=>{let{[t]:n,...o}=l.beside;h({beside:e?{...o,[t]:e}:o})};function vr(t){for(let e of bt)l.beside[e]===t&&ou(e,void 0)}async function ly(t,e){try{let n=await Lt(t,e);return J(n)&&Uo(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function Fn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await ly(e,n);return ou(t,i),i&&J(i)&&kt("unwritten",{file:i}),i?.theirs&&kt("conflict",{file:i}),i}var Jm=()=>Te("studio.json");async function Vo(t=!1){let e=Jm(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await Fn("studio",Ii,e):ou("studio",void 0))}async function kr(){l.run.shipped&&await Eo(l.run);let t=Jm();await Fn("studio",Ii,t)||(await uy(t),await Fn("studio",Ii,t))}async function uy(t){try{await Oo({file:t,version:null,text:it({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}ao(Ii,t)}var zm=(t,e)=>Jt(t.file)+e;async function dy(t){try{return wt((await Mt(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function xr(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Eo(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=zm(e,n);return Fn("own_fats",je,await dy(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Jt(a.file)===Jt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await su(je,zm(e,"my.fats.json"),i);return V(t,"/own_fats",ee(s)),Fn("own_fats",je,s)}async function iu(){l.run.shipped&&await Eo(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return Fn("own_tips",Dn,Te(n));let o=Jt(l.run.file),i=(l.files?.tips??[]).find(d=>!d.shipped&&Jt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await su(Dn,`${o}my.tips.json`,s);return l.beside.studio?V("studio","/own_tips",ee(a)):V("run",t,ee(a)),Fn("own_tips",Dn,a)}async function Vi(t,e){await Fn(t===je?"own_fats":"own_tips",t,e)&&h({held_open:e})}function Cn(){let{view:t,held_open:e,beside:n}=l,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function Tr(t,e){let n=t===je;await Vi(t,await su(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function su(t,e,n){let{file:o}=await me({kind:t,name:e,text:it(n)});return ao(t,o),o}function Vm(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(ee(e));for(let i of pt)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&V(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&V("run",o,t.file)}var _o=[],Ko=[],Ki=()=>_o.at(-1),au=()=>Ko.at(-1);function Sr(t){_o=[..._o,t],Ko=[],h({list_told:t.words}),q(t.words)}async function Qm(){let t=Ki();t&&(await t.undo(),_o=_o.slice(0,-1),Ko=[...Ko,t],h({list_told:""}),q("Undone"),await fe())}async function Gm(){let t=au();t&&(await t.redo(),Ko=Ko.slice(0,-1),_o=[..._o,t],h({list_told:t.words}),q("Redone"),await fe())}async function fe(){let[t,e]=await Promise.all([Vs(),Kc()]);h({files:t,removed:e})}async function Ym(t,e){let{$schema:n,...o}=JSON.parse((await Mt(e.file)).text),i=`${e.name||Qo(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},a=t.called?t.new_name(uo(t,s)):ke(i,lu(e.file)),{file:d}=await me({kind:t,name:a,text:it(s),from:e.file});await fe();let c="";return Sr({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await Rr(d,!0),redo:()=>Di(c)}),d}var lu=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",Qo=t=>ee(t).slice(0,-lu(t).length||void 0),Zm=(t,e)=>Jt(t)+e+lu(t),Km=t=>[l.run,l.order?.open,...pt.map(e=>l.formulas[e]),...bt.map(e=>l.beside[e])].find(e=>e?.file===t);async function Xm(t,e,n){let o={name:e.name,note:e.note,stem:Qo(e.file)};await ru(t,e.file,n),await fe();let i=Zm(e.file,n.stem);Sr({words:`Changed ${n.name||i}.`,undo:()=>ru(t,i,o),redo:()=>ru(t,e.file,n)})}async function ru(t,e,{name:n,note:o,stem:i}){let s=Km(e),a=s??await Lt(t,e),{note:d,...c}=a.now,p={...c,...o&&{note:o}},m=t.called?A(p,`/${t.called}`,n||void 0):p;if(it(m)!==it(a.now)&&(s&&zo(s)&&go(),s===l.order?.open&&l.order&&Jo(l.order),Rt(a,m),await He(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=Zm(e,i);if(_===e)return;let{renamed_in:w}=await Jc(e,_);s&&hm(s,_);for(let b of w){let k=Km(b);k&&await gm(k)}}async function Rr(t,e){let{removed:n}=await Vc(t,e);l.run.file===t&&Wo(),l.order?.open.file===t&&h({order:void 0});let o=bt.map(i=>l.beside[i]).find(i=>i?.file===t);return o&&vr(o),n}async function tf(t,e){let n=await Rr(t.file,e);await fe(),Sr({words:`Removed ${t.name||t.file}.`,undo:()=>Di(n),redo:async()=>n=await Rr(t.file,!0)})}async function ef({removed:t,file:e,name:n}){await Di(t),await fe();let o="";Sr({words:`${n||e} is back.`,undo:async()=>o=await Rr(e,!0),redo:()=>Di(o)})}async function nf({removed:t,file:e,name:n}){h({removed:await Qc(t),list_told:""}),q(`${n||e} is deleted for good.`)}async function Ln(){for(let t of["pour","pipe"]){let e=$(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await cy(t,Kt(e,l.files?.formulas)):qe(t,void 0)}}async function cy(t,e){if(l.formulas[t]?.file===e)return;let n=pt.map(o=>l.formulas[o]).find(o=>o?.file===e);if(qe(t,n),!n)try{let o=await uu(e);qe(t,o),J(o)&&kt("unwritten",{file:o}),o.theirs&&kt("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function uu(t){let e=await Lt(Lo,t);return J(e)&&Uo(e),e}var Qi=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Go(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function sf(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let w=3*c[p+_],b=3*c[p+(_+1)%3],k=d[w+i]-e,z=d[b+i]-e;if(k>0==z>0)continue;let Pt=k/(k-z),Xn=[1e3*(d[w]+Pt*(d[b]-d[w])),1e3*s*(d[w+o]+Pt*(d[b+o]-d[w+o]))];k>0?m.push(Xn):m.unshift(Xn)}m.length===2&&a.push([m[0],m[1]])}return a}function rf(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Gi(t){let e=t.positions,[n,o,i,s,a,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:rf(sf(t,c)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*d,cut_y:-1e3*c}}function af(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>rf(sf(t,n+s*o,"level"))).reduce((s,a)=>of(a)>1.001*of(s)?a:s)}function of(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function du(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,c]:[s+(e-a)/(p-a)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var lf=40,py=2e3,cu=0;async function uf(t){let e=await Ee({kind:"glb",gauge:t}),n=Go(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Yo(t){let[e,n]=await Promise.all([Tn(t),uf(t)]),o=Gi(n);return{gauge:e,outline:o,above:af(n,o)}}async function my(t){let{pockets:e}=await Tn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:lf},(i,s)=>`${(n*(s+1)/lf).toFixed(4)} mm`);return Tn({...t,depth:o})}function De(){fy()}async function fy(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++cu,n=Kt(t,l.files?.moulds);try{let[o,i]=await Promise.all([my({file:n}),uf({file:n})]);e===cu&&h({measured:{mould:n,gauge:o,outline:Gi(i)},measuring_failed:void 0})}catch(o){if(e!==cu)return;if(!(o instanceof v))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(De,py)}}var Yi=()=>h({own_fats:{}});function Wn(t){let e=Zi(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Zi(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Jt(e.file)+n,n].includes(o.file))return cf(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(df(i,"waiting"),hy(n,e.file).then(a=>df(i,a)),"waiting")}var df=(t,e)=>h({own_fats:{...l.own_fats,[t]:e}});async function hy(t,e){for(let n of new Set([Jt(e)+t,t])){let o=cf(await gy(n));if(o)return o}return"none"}var cf=t=>Array.isArray(t?.fats)?t.fats.map(_y):void 0;async function gy(t){try{return wt((await Mt(t)).text)}catch{return}}var _y=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:$y(n)});function $y(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Zo=[],Xi;function Dr(){Zo.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Zo.push(t);Xi===void 0&&mf()}function pf(t){let e=l.own_moulds[t];return!e&&t!==Xi&&!Zo.includes(t)&&Zo.push(t),Xi===void 0&&Zo.length&&mf(),e}async function mf(){for(;(Xi=Zo.shift())!==void 0;){let t=Xi,e=await wy(t);h({own_moulds:{...l.own_moulds,[t]:e}})}}async function wy(t){try{let{pockets:e}=await Tn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var gf=()=>h({own_tips:{}}),pu=!1;function ts(){return!l.tips&&!pu&&(pu=!0,sp().then(t=>h({tips:t}),_f).finally(()=>pu=!1)),l.tips??[]}function mu(t){let e=Te(t),n=l.beside.own_tips;if(n?.file===e)return hf(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(ff(e,[]),Mt(e).then(({text:i})=>ff(e,hf(wt(i))),_f),[])}var ff=(t,e)=>h({own_tips:{...l.own_tips,[t]:e}});function hf(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function _f(t){if(!(t instanceof v))throw t}var Ar=300,by=5e3,vf=2e3,yy=500,$f=!1,es=new AbortController,kf=()=>es.abort(),xf=()=>document.visibilityState==="hidden";function Or(){if($f)return;$f=!0;let t=async()=>{es=new AbortController;let e=await vy(es).then(()=>xf()?by:Ar,()=>es.signal.aborted?Ar:vf);await wf(Ar),await wf(e-Ar,es.signal),t()};t()}var wf=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),Tf=()=>[l.run,...l.order?[l.order.open]:[],...l.mould?[l.mould.open]:[],...Io()],Rf=()=>new Map(Tf().flatMap(_m)),bf=()=>JSON.stringify([[...Rf().keys()],[...Ul().keys()],$r()?.run??null]);async function vy(t){let[e]=km();e!==void 0&&await yf(e);let[n,o]=[Rf(),Ul()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),a=s&&!xf()?await ky(i,t):await Ai(i,$r());a.bench!==void 0&&await fo(),zl(a.unreadable),await xy(n,a);let[d]=vm(o,s?a:await Ai(o));d!==void 0&&await yf(d)}async function ky(t,e){let[n,o]=[bf(),Date.now()],i=window.setInterval(()=>{(bf()!==n||Date.now()-o>Gc+vf)&&e.abort()},yy);try{return await Yc(t,$r(),e.signal)}finally{window.clearInterval(i)}}async function xy(t,{changed:e}){let n=Io();for(let o of Tf()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await Ty(o,i):await Il(o,i,Nl,()=>{}))}}async function Ty(t,e){await Il(t,e,Nl,()=>Jl(t.file))&&(Yi(),dt())}async function yf(t){Jl(t),await jl(),Yi(),gf(),h({measured:void 0}),De(),Dr(),await Promise.all([Ln(),Vo(!0)]),dt()}async function Df(t){let e=await mp();h({files:e});let n=pp(e,t.run);try{await ze(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Af(){let[t,e]=await Promise.all([op(),ip()]);h({fats:t,catalogue:e})}var Ry=()=>new Promise(t=>setTimeout(t,400)),fu={};async function ze(t,e="weigh"){if(!t)return h({view:"runs"});let n=fu={name:t},o=l.view;l.run.file&&J(l.run)&&await Ne();let i=await Lt(so,t);if(fu!==n||(Wo(i),_r(),await Promise.race([Sm(),Ry()]),l.run!==i))return;l.view===o&&fu===n&&h({view:e}),localStorage.setItem("run",i.file),J(i)&&(Uo(i),On());let s=qo().finally(De);await Promise.all([s,Ln(),Vo()]),Or()}var Sf=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function Pr(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(o.cut={bar:{thickness:t.slice},...Sf()?{}:{kerf:""}}),Sf()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await me({kind:so,name:ke(t.name,".run.json"),text:it(o)});at("set-up pour"),t.slice&&at("set-up cut"),await ze(i,"set-up")}var Sy="examples/plain_bars.run.json";function Qt(t){Yi();let e=ln(l.view)?l.view:l.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function ns(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Qt(e);l.run.file||await ze(Sy,"reading"),await Dy(t)}async function Dy(t){let e={past:l.past,future:l.future};h({run_steps:e,past:[],future:[]});try{qe("apart",await uu(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Qt("apart"),qo()}async function Ay(){let t=l.formulas.apart!==void 0;return await Mr()?(h({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function Mr(){return l.formulas.apart?await Oy()?(qo(),!0):!1:!0}async function Oy(){try{await Ue()}catch(e){if(!(e instanceof v))throw e;return h({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return q("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;qe("apart",void 0);let t={...l.dangers,apart:[]};return h({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Of(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&qe(o,void 0);n&&await Mr(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function hu(t){let{file:e}=l.formulas.apart;await Ay()&&V("run",`/${t}/formula`,e)}var Py=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Pf=t=>Ff(Py(t));async function Mf(t,e){let{$schema:n,...o}=JSON.parse((await Mt(t)).text);await Ff({...o,name:e},t)}async function Ff(t,e){let n=ke(String(t.name),".formula.json"),{file:o}=await me({kind:Lo,name:n,text:it(t),from:e});await ns(o)}var My=30,Cf=0,gu=!1,_u=!1;function $u(t,e,n){let o=e==="mesh"?l.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),bu()}var Je=()=>h({mould:void 0,mesh:void 0}),Xo=(t,e,n)=>$u(uo(Vt,t),e,n);async function Lf(t,e){let n=await Lt(Vt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),$u(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function Wf({id:t,file:e,text:n}){let o=e?await Lt(Vt,e,t):uo(Vt,JSON.parse(n),t);$u(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var nt=()=>l.mould,I=()=>nt().open.now;function xt(t,e){Jo(nt(),t),Rt(nt().open,A(I(),t,e))}var Bf=()=>br(nt()),Ef=()=>yr(nt()),Fy=["name","note","owned","unmould_after"];function wu(t){let e=I(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!Fy.includes(a)))&&y(nt(),{is_old:!0});let i=n.some(a=>nt().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(nt().is_old||i||s)&&bu()}function bu(){clearTimeout(Cf),Cf=window.setTimeout(()=>{Cy()},My)}async function Cy(){if(gu)return void(_u=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!ve(e,"shape")&&!ve(e,"mesh"))){if(Ei(e).length)return y(t,{complaint:void 0});gu=!0;try{let n=Vt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Yo(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&yu(n)}finally{gu=!1,_u&&bu(),_u=!1}}}function yu(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;y(nt(),{complaint:{field:ar(I(),e),line:a,keep:i&&{...i,at:ar(I(),i.at)},about:s===void 0?void 0:ar(I(),`${e}/${s}`)}})}var If={};async function os(t){let e=If={name:t},n=l.view;if(l.order?.open.file!==t){l.order&&J(l.order.open)&&await Ne(l.order.open);let o=await Lt(ro,t);if(If!==e)return;let i=J(o)?[o.saved??{}]:[];h({order:{open:o,past:i,future:[],times:""},typed:void 0}),J(o)&&On(o)}l.view===n&&h({view:"order",typed:void 0}),Or()}function jf(){h({order:void 0,...l.view==="order"?{view:"orders"}:{}})}async function qf(t){let e={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},n=ro.new_name(uo(ro,e)),{file:o}=await me({kind:ro,name:n,text:it(e)});await os(o)}var Wt=()=>l.order,Hf=()=>br(Wt()),Nf=()=>yr(Wt());var Fr=t=>Object.values(l.formulas).includes(t),ti=t=>Object.values(l.beside).includes(t),Uf=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function Ly(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&De(),Uf(t)!==Uf(e)&&Ln(),dt(),On()}var Wy=dt;function By(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(ee(e))?A(s,o,t.file):s;tu(l.run,i),i(l.run.now)!==l.run.now&&Rt(l.run,i(l.run.now))}}async function Ey(t){t===l.run?(Wo(),localStorage.removeItem("run"),h({view:"runs"})):t===l.mould?.open?Je():t===l.order?.open?jf():ti(t)?vr(t):await Of(t),await fe(),l.run.file&&dt()}function zf(){xe("edited",({file:t,before:e})=>{t===l.run?Ly(e,t.now):Fr(t)||ti(t)?Wy():t===l.mould?.open?wu(e):t===l.order?.open&&On(t)}),xe("gave_way",({file:t})=>{if(t===l.mould?.open)return wu();t!==l.order?.open&&(t===l.run&&(De(),Ln().then(dt)),dt())}),xe("left_deleted",({file:t})=>{Ey(t)}),xe("unwritten",({file:t})=>{t===l.run||t===l.order?.open?Ne(t):(Fr(t)||ti(t))&&dt()}),xe("conflict",({file:t})=>{(Fr(t)||ti(t))&&h({is_old:!0})}),xe("renamed",({file:t})=>{ti(t)&&l.held_open!==void 0&&h({held_open:t.file}),t===l.run&&(localStorage.setItem("run",t.file),De(),Ln()),dt()}),xe("copied",({file:t,from:e})=>{Fr(t)&&By(t,e),ti(t)&&Vm(t,e),l.held_open===e&&h({held_open:t.file}),t===l.run&&(Am(e),localStorage.setItem("run",t.file),Vo().then(dt))})}var ie=r`<span aria-hidden="true">⚠</span> Danger`;function is(t,e="",n){let o=Bn(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${ie}</strong> ${i}</p>`)}
  </div>`:u}function Bn(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Jf(){let t=ce(l.view)||l.view==="order"||qi()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Vf=()=>Jf().length>0;function Kf(){let t=Jf(),e=qy();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${ie}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${Iy()?r`<button type="button" @click=${jy}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Iy=()=>pn(qi())!==void 0&&!ce(l.view);function jy(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function qy(){if(!l.run.file||l.view==="reading")return"";let t=pn(qi());return t&&co(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var hn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Cr=t=>(...e)=>({_$litDirective$:t,values:e}),ei=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:Hy}=Cp,Qf=t=>t;var Yf=t=>t.strings===void 0,Gf=()=>document.createComment(""),ni=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(Gf(),i),a=o.insertBefore(Gf(),i);n=new Hy(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,d=a!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==a._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=Qf(c).nextSibling;Qf(o).insertBefore(c,i),c=p}}}return n},En=(t,e,n=t)=>(t._$AI(e,n),t),Ny={},Lr=(t,e=Ny)=>t._$AH=e,Zf=t=>t._$AH,Wr=t=>{t._$AR(),t._$AA.remove()};var F=Cr(class extends ei{constructor(t){if(super(t),t.type!==hn.PROPERTY&&t.type!==hn.ATTRIBUTE&&t.type!==hn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Yf(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Ft||e===u)return e;let n=t.element,o=t.name;if(t.type===hn.PROPERTY){if(e===n[o])return Ft}else if(t.type===hn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Ft}else if(t.type===hn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Ft;return Lr(t),e}});var Ht=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function gn(t,e){let n=Ht(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Ht(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Br(t,e){let n=Ht(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Ir=28.349523125,nh=25.4,Uy=29.5735295625;function Ve(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function R(t,e){return zy(Ve(t,e))}var zy=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Gt(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${Ve(t,e)} %`:vu(t)?"just below 0 %":"0.0 %"}var vu=t=>t<0||Object.is(t,-0),oh=t=>Math.abs(t-Math.round(t))<1e-6;function Xf(t){return t?[0,1,2,3].find(e=>oh(t*10**e))??3:0}function th(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function Jy(t){return[0,1,2].find(e=>t.every(n=>oh(n*10**e)))??3}function jr(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function ft(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Jy([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var ih=.001;function Er(t,e,n,o,i=1e-9){let s=10**n;return Ve(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var eh=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Vy(t){if(!eh.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return eh.find(e=>Math.abs(e*Ir-t)<.6*ih)}function Z(t,e,n="nearest"){let o=e.scale_step_g||.1,i=Vy(o),s=Math.min(.6*ih,o/2),a=i?Er(e.g,1,th(o),n):Er(e.g,1,Xf(o),n,s),d=i?Er(e.g,Ir,Xf(i),n,s):Er(e.g,Ir,th(o/Ir),n),[c,p]=[`${e.g_text??a} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:jr(t,c,p)}var E=(t,e,n=1,o="nearest")=>Z(t,{g:e,scale_step_g:10**-n},o);function At(t,e,n=1){return jr(t,`${Ve(e,n)} ml`,`${Ve(e/Uy,2)} US fl oz`)}function St(t,e){return jr(t,`${R(e,1)} mm`,Ky(e))}function Ky(t){let e=Math.round(Math.abs(t)/nh*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var ku=([t])=>t,O=([t,e])=>e?`${t} (${e})`:t;function sh(t,e){return jr(t,`${Ve(e,0)} \xB0C`,`${Ve(e*1.8+32,0)} \xB0F`)}function Ae(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??nh;return n*o}function Ke(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Qe=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function yt(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Tt(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${yt(t)}`}var rh=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),Ge=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,yt);function qr(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function In(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function uh(t){let e=Ae(t.round?.radius);if(e)return ah(e,S`<circle class="plain" r=${e} />`);let n=Qy(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?ah(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var ah=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function Qy({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return Gy(t);if(!Array.isArray(e))return;let n=e.map(o=>[lh(o,"x"),-lh(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function lh(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Ae(n.replace(/^-/,""))??NaN)}function Gy({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Ae(e),Ae(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,a)=>{let d=Math.PI*a/t,c=a%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var xu=!1;function dh(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!xu&&Zy(),{workings:Yy(n?.workings,t),complaint:n?.complaint,is_old:o}}function Yy(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Zy(){let{plan:t,planned:e}=l;if(!(!t||!e)){xu=!0;try{let{how:n}=await Zc(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{xu=!1}}}var ch=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,Tu={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${ch}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${ch}<path class="measure" d="M20 10h80" />`}};var Ru=t=>`term ${t}`;function _n(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(Ru(t))?"true":"false"}
    aria-label="What ${Tu[t].name} means"
    @click=${()=>qt("open",Ru(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Oe(t){if(!l.open.has(Ru(t)))return u;let{name:e,words:n,drawing:o}=Tu[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var jn=t=>r`<span class="term">${_n(t)}${Oe(t)}</span>`;function M({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:d}){let c=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${_n(d)}${Oe(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?Hr(i):Su(o)}</div>`:u}
  </div>`}var $o=(t,e,n)=>M({key:t,label:e,shown:["",""],of:n});function Su(t){let{workings:e,complaint:n,is_old:o}=dh(t);return e.length?r`<div class=${o?"old":""}>${e.map(Hr)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Hr({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
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
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var wo,ss=[],$n=()=>wo!==void 0;function se(t,e,n,o){if(!wo||wo.some(s=>s.id===n))return;let i=ss.flatMap(({part:s})=>s??[]);wo.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:ss.flatMap(({fold:s})=>s??[])})}function he(t,e){ss.push(t);try{return e()}finally{ss.pop()}}var ph=()=>{},mh=t=>{ph=t},Nr,Xy=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function oi(){if($n())return[];let t=Xy();return Nr?.of.length===t.length&&t.every((n,o)=>n===Nr.of[o])||(Nr={of:t,wanted:tv()}),Nr.wanted}function tv(){wo=[],ss=[];try{return ph(),wo}finally{wo=void 0}}function fh(t){l.touched.has(t)||h({touched:new Set(l.touched).add(t)})}function hh(t,e){if(l.has_asked)return!1;let n=oi().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var N=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Ur(t){if(t==="order")return l.order?.quoted?.complaint??l.order?.days?.complaint;let e=(n,o)=>o===l.plan?n?.complaint:void 0;return l.complaint??e(l.quoted,l.quoted?.of)??e(l.run_days,l.run_days?.of[0])}function Bt(t,e){let n=Ur(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return ge(t)&&!hh(t,n.field)?Q(n):void 0}function vt(t,e){return Ur(t)?.field===e?Bt(t,e):void 0}function ge(t){let e=Ur(t),n=Mn(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function ev(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function Ye(){let t=Ur();if(t)for(let e of["run",...pt,...bt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Bt(e,n)&&document.getElementById(N(e,n));if(o)return o}}function nv(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=ov(t,n);return o&&Qe(e)?`${e.trim()} ${o}`:e}function ov(t,e){return Ke(g(e,t.at))||t.unit||""}var ht=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,Du=!1;addEventListener("pointerdown",()=>Du=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>Du=!1,!0);var iv=()=>h({typed:void 0});function rs(t){let{id:e}=t.target,n=()=>{iv(),fh(e)};Du?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var sv=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,rv=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=N(e,t.at),o=g(e,t.at),i=sv(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);d&&se(e,t.at,n,t.label);let c=Bt(e,t.at),p=w=>{let b=w.target.value;h({typed:{key:n,text:b}});let k=nv(t,b);V(e,k===void 0&&t.takes_part?ev(e,t.at):t.at,k)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${Au(r`<label for=${n} data-said=${rv(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${F(a)}
      @input=${p}
      @blur=${rs}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ht(n,c,_)} ${t.term?Oe(t.term):u}
  </div>`}var Au=(t,e)=>e?r`<div class="labelled">${t}${_n(e)}</div>`:t;function Nt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var U=t=>()=>document.getElementById(t),X=(t,e)=>U(N(t,e)),Pe=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),av=()=>document.activeElement;function G(t){requestAnimationFrame(()=>Nt(t()))}function re(t,e,n,o=av){q(e),Um(t,n),G(o)}function B(t,e,n,o,i){re(t,e,s=>A(s,n,o),i)}var _e=(t,e,n)=>`${N(t,e)}-${n}`;function C(t,e){let n=vt(t,e);return n?r`<p id=${N(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var gh=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function lt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${gh(e,n,o)}</div>`}function T({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:d,then:c,hint:p,optional:m,term:_}){let w=i?_e(t,n,e.replaceAll(/\W+/g,"-")):N(t,o),b=s===void 0&&!m;b&&se(t,o,w,e);let k=i?void 0:vt(t,o),z=Pt=>{if(Pt===s)return;let Xn=a.find(([lb])=>lb===Pt)[1];B(t,`${e}: ${Xn}`,n,d(Pt),c&&X(t,c(Pt)))};return r`<div class="field asked ${k?"wants":""}">
    ${Au(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${k||p?`${w}-said`:u}
    >
      ${gh(s,a,z)}
    </div>
    ${ht(w,k,p)} ${_?Oe(_):u}
  </div>`}function Ou(t,e,n,o){let i=N("run",t),s=vt("run",t),a=()=>B("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${ht(i,s)}`}function _t({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:d}){let c=N(e,n),p=Bt(e,n),m=a??D(e,n);!m&&!s&&se(e,n,c,t);let _=!m||o.some(([k])=>k===m),w=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${k=>{let z=k.target.value;d?d(z):V(e,n,z||!s?z:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${w.filter(([k])=>k||s||!m).map(([k,z])=>r`<option value=${k} .selected=${F(k===m)}>${z}</option>`)}</select
    >${ht(c,p)}
  </div>`}function ii(t,e,n=[]){let o=Kt(D("run",e),n);return _t({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Ut({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let d=_e(t,e,"part"),c=_e(t,e,"add"),p=()=>he({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>B(t,`${o} added`,e,s,Pe(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>B(t,`${o} removed`,e,void 0,U(c))}
      >
        Remove
      </button>
    </div>
    ${C(t,e)} ${p()}
  </div>`}var _h=(t,e)=>`folded ${t} ${e}`,Et=(t,e)=>at(_h(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=_h(t,e);if($n())return r`${he({fold:a},s)}`;(i||n.some(p=>Bt(t,p)))&&at(a);let d=l.open.has(a);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),qt("open",a)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var x=({of:t="run",at:e})=>tt(t,e),W=({of:t="run",at:e},n)=>_e(t,`${e}/${n}`,"item"),zr=({of:t="run",at:e},n,o)=>_e(t,`${e}/${n}`,o),lv=({of:t="run",at:e})=>N(t,e);function as(t,e,n,o){let{of:i="run",at:s,stays:a,and:d=c=>c}=t;re(i,e,c=>d(A(c,s,n.length||a?n:void 0),n.length),o)}function j(t,e,n){let o=x(t);as(t,`${n} added`,[...o,e],Pe(W(t,o.length)))}function uv(t,e,n){let o=x(t).filter((a,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);as(t,`${n} removed`,o,s?U(zr(t,i,"drop")):X(t.of??"run",t.at))}function dv(t,e,n,o){let i=[...x(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;as(t,`${o} moved ${a}`,i,U(zr(t,e+n,c)))}function H(t,e,n){let o=x(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(d,c,p)=>r`<button
      type="button"
      id=${zr(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>dv(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${zr(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>uv(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Y(t,e,n){let o=lv(t),i=vt(t.of??"run",t.at);return r`${ht(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var st=()=>l.beside.studio!==void 0,ls=({run:t})=>g("run",t),Pu=({studio:t})=>g("studio",t);function us(t){return ls(t)===void 0&&st()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var Ze=t=>ls(t)??Pu(t),Ot=(t,e)=>f({...e,...us(t)}),Mu=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function ds(t,e=""){return t===void 0||Mu(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>ds(o,`${e}/${L(n)}`))}function wn(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Mu($(t,n))&&(t=A(t,n,void 0));return t}var si=(t,e)=>e.reduce((n,o)=>wn(A(n,o,void 0),o),t);function wh(t){let e=new Map;return t.flatMap(n=>ds(ls(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return Mu(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Fu(t){st()||await kr();let e=wh(t);Se([["studio",n=>e.reduce((o,[,i,s])=>A(o,i,s),n)],["run",n=>si(n,e.map(([o])=>o))]]),q("Kept in the studio")}function cv(t){let e=t.flatMap(o=>ds(Pu(o)).map(([i,s])=>[o.run+i,s]));Se([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?A(i,s,a):i,o)]]),q("Said in this run only")}function pv(t){let e=t.flatMap(n=>ds(ls(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Se([["run",n=>si(n,e)]]),q("Taken from the studio again")}var $h=t=>ds(t).length>0;function qn(t,e){if(!st())return u;let n=e.some(s=>$h(ls(s))),o=e.some(s=>$h(Pu(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&wh(e).length?i("Keep in my studio",()=>{Fu(e)}):u}
    ${n&&o?i("As in the studio",()=>pv(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>cv(e)):u}
  </span>`}function Cu(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Kt(o,n)===Kt(t,n))??t}var ct=(t,e)=>Object.keys(g(t,e)??{}),bh=(t,e)=>`${N(t,e)}-name`;function ri({of:t,at:e,label:n,add:o,blank:i,then:s}){let a=bh(t,e),d=()=>{let c=document.getElementById(a),p=c.value.trim();if(!p)return c.focus();if(c.value="",ct(t,e).includes(p))return Nt(s(p)());B(t,`${p} added`,`${e}/${L(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${a}>${n}</label>
      <input
        id=${a}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function cs({of:t,at:e,name:n,label:o,also:i=a=>a,put:s}){let a=`${N(t,e)}-${ct(t,e).indexOf(n)}-called`;return Wu({id:a,name:n,label:o,taken:ct(t,e),take:d=>{let c=p=>i(ps(p,e,n,d),d);s?s(c,d):re(t,`${n} is called ${d}`,c)}})}var Lu;function Wu({id:t,name:e,label:n,taken:o,take:i,hint:s}){let a=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);Lu=m?{id:t,words:`Another is called ${p} already`}:void 0,h({typed:void 0}),!(!p||m||p===e)&&(i(p),q(`${e} is called ${p}`),G(U(t)))},d=Lu?.id===t?Lu.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${F(l.typed?.key===t?l.typed.text:e)}
      @input=${c=>h({typed:{key:t,text:c.target.value}})}
      @change=${a}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||s?`${t}-said`:u}
    />
    ${ht(t,d,s)}
  </div>`}function ps(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,a])=>[s===n?o:s,a]);return A(t,e,Object.fromEntries(i))}function bo(t,e,n,o=n){let i=s=>wn(A(s,`${e}/${L(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>re(t,`${o} removed`,i,U(bh(t,e)))}
    >
      ×
    </button>
  </div>`}var yo="/pipe/beads",Fe=`${yo}/tip`,mv={of:"run",at:Fe},Xe={at:`${yo}/moves`,in_order:!0},Bu="\0own",xh={tip:"",bead_to_opening:"",moves:[]},Me=(t,e)=>({name:t,label:e,kind:"length"}),yh={name:"count",label:"How many",kind:"count"},vh=Me("circle_radius","Radius of their circle"),Eu={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Me("diameter","Diameter"),Me("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Me("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Me("start_radius","Radius at the start"),Me("end_radius","Radius at the end"),Me("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Me("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[yh,vh,Me("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[yh,vh,Me("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Me("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Th(t){return r`${hv()} ${Iu()?Vr(mv):bv()}
    ${f({label:"Bead \xF7 tip opening",at:`${yo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(Xe).map((e,n)=>Sv(e,n,t))}</div>
    ${Ov()}`}var Iu=()=>typeof g("run",Fe)=="object",ju=()=>String(g("run",`${yo}/own_tips`)??g("studio","/own_tips")??"");function fv(){let t=ju(),e=t?mu(t):[];return g("run",`${yo}/own_tips`)===void 0?[...e,...ts()]:e}function hv(){let t=n=>n===Bu?B("run","a tip of your own",Fe,{name:"",round:{radius:""}},_v):V("run",Fe,n),e=fv().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${_t({label:"Tip",at:Fe,answers:[...e,[Bu,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Iu()?Bu:void 0})}
  ${Iu()?u:P({name:"tips",pointers:[`${yo}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${yo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var gv=_e("run",Fe,"own"),_v=Pe(gv);async function $v(){let t=g("run",Fe);if(!await iu())return;let e=tt("own_tips","/tips"),n=wv(String(t.name).trim()||"My tip",e);Se([["own_tips",o=>A(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>A(o,Fe,n)]]),q(`${n} kept in ${l.beside.own_tips.file}`)}function wv(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...ts()].some(i=>i.name===o))return o}}function bv(){let t=D("run",Fe),e=ju();if(!t||!e||!mu(e).some(o=>o.name===t))return u;let n=tt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{iu()}}>Change this tip of my own</button>`:Vr({of:"own_tips",at:`/tips/${n}`})}var kh=[["round","Round"],["star","Star"],["outline","Another outline"]],Jr={x:"",y:""},yv={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Jr,Jr,Jr]};function Vr({of:t,at:e}){let n=kh.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...mt(t,e,n),[s]:yv[s]});return r`<div class="part" id=${_e(t,e,"own")} role="group" aria-label="My own tip">
    ${C(t,e)} ${vv({of:t,at:e})}
    ${T({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:kh,puts:i})}
    ${o?Tv({of:t,at:e},o):u}
    ${P({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>xv({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{$v()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var vv=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):Wu({id:N(t,`${e}/name`),name:D(t,`${e}/name`),label:"What you call the tip",taken:tt("own_tips","/tips").map(({name:n})=>String(n)),take:n=>kv(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function kv(t,e){let n=D("own_tips",`${t}/name`),o="/hand",i=Te(ju())===l.beside.own_tips?.file,s=i&&g("run",Fe)===n,a=i&&g("studio",`${o}/${L(n)}`)!==void 0;Se([["own_tips",d=>A(d,`${t}/name`,e)],...s?[["run",d=>A(d,Fe,e)]]:[],...a?[["studio",d=>ps(d,o,n,e)]]:[]])}function xv({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>B(t,"correction removed",n,void 0,Pe(_e(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function Tv(t,e){if(e==="outline")return Rv(t);let{of:n,at:o}=t,i=(s,a)=>f({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function Rv({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(n).map((o,i)=>r`<div class="row" id=${W(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${H(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Y(n,"One more corner",()=>j(n,Jr,"corner"))}`}function Sv(t,e,n){let o=Eu[String(t.move)],i=`${Xe.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${W(Xe,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${H(Xe,e,s)}
    </div>
    ${C("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>Dv(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Av(e,n)}
  </div>`}function Dv(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function Av(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==x(Xe).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return M({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:At(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Ov(){let t=o=>({move:o,...Object.fromEntries(Eu[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=N("run",Xe.at),n=vt("run",Xe.at);return x(Xe).length||se("run",Xe.at,e,"What the tip does"),r`${ht(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Eu).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>j(Xe,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function tn(t,e=()=>{}){if(!t.theirs)return u;let n=co(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{cm(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>pm(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>dm(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function en(t){if(t.theirs||!t.set_aside||zo(t)&&!t.is_taken)return u;let e=()=>{zo(t)&&go(),mm(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>lm(t)}>Close</button>`:u}
    </div>
  </section>`}var Kr={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Sh(t,e){let n=Zi(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=tt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{Pv(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>he({part:D("own_fats",`${a}/name`)||"Your own fat"},()=>qu(a))})}async function Pv(t,e){await xr(t),Et("own_fats",e);let n=tt("own_fats","/fats").findIndex(o=>o.id===e);G(U(`f-own_fats-fats-${n}-name`))}var Mv=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function qu(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${C("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:D("own_fats",`${t}/kind`)||void 0,answers:Mv,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${Fv(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>Cv(t)})}`}function Fv(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function Cv(t){let e=(o,i,s,a)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>B("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${C("own_fats",d)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
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
    ${Lv(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var Rh=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Lv(t){let e=Object.keys(g("own_fats",t)??{}),n=Rh.filter(([a])=>!e.includes(a)),o=a=>Rh.find(([d])=>d===a)?.[1]??a,i=a=>`${t}/${L(a)}`,s=a=>{let d=Array.isArray(g("own_fats",i(a))),c=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>B("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${C("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${_t({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&B("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}function ai(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:c?.whippings??[],whole:t}}var K=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,Wv=t=>t.cut?["loaf","loaves"]:["cast","casts"];function nn(t,{pieces:e,casts:n}){let o=t.cut?K(e,"bar"):K(e,"piece");return n===e?o:`${o} from ${K(n,...Wv(t))}`}var Bv=t=>t===1?"once":`${t} times`,Hu=t=>t.batches.length>1,It=t=>t.pieces.batches>1;function Ce(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function gt(t){return It(t.whole)?`one batch, ${nn(t.whole,t.batch)}`:""}var Dh=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Nu(t,e){return Dh(t)?`${nn(t.whole,e)}${e.count>1?`, whipped ${Bv(e.count)}`:""}`:""}function Qr(t,e){let n=Nu(t,e);return n&&`one whipping: ${n}`}var Ah=t=>It(t.whole)||Dh(t),Gr=(t,e)=>`${K(t,"filling")} of ${K(e,"cavity","cavities")}`;var Oh=t=>[...l.files?.runs??[],...l.files?.orders??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Yr(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${Ce(e.map(Oh))}.</p>`:u}function li(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ce(e.map(Oh))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var ms={of:"own_fats",at:"/fats",least:1},Zr={of:"own_tips",at:"/tips",least:1},vo=({of:t,at:e})=>tt(t,e);function Ph(t){return Fh(t,ms,"fats",e=>{let n=`/fats/${e}`;return P({of:"own_fats",name:String(vo(ms)[e].id),pointers:[n],summary:r`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${Ev(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>qu(n)})})}function Ev(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function Mh(t){return Fh(t,Zr,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${uh(vo(Zr)[e])}
      ${P({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>Vr({of:"own_tips",at:n})})}
    </div>`})}function Fh(t,e,n,o){let i=l.files?.[n].find(({file:a})=>a===t.file),s=a=>String(vo(e)[a].name||`number ${a+1}`);return r`${tn(t)} ${en(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${li(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${vo(e).map((a,d)=>r`<div class="held" id=${W(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${H(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Uu=(t,e)=>({...Kr,id:Br(t,e),name:t});function Ch(t){let e=Uu(t,[...l.fats,...vo(ms)]);j(ms,e,t),Et("own_fats",String(e.id)),G(X("own_fats",`/fats/${vo(ms).length-1}/source`))}var zu=t=>({name:t});function Lh(t){j(Zr,zu(t),t);let e=vo(Zr).length-1;Et("own_tips",`tip ${e}`),G(Pe(_e("own_tips",`/tips/${e}`,"own")))}var Wh=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Xr=Cr(class extends ei{constructor(t){if(super(t),t.type!==hn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let d of t)i[a]=o?o(d,a):a,s[a]=n(d,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=Zf(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let d=this.ut??=[],c=[],p,m,_=0,w=i.length-1,b=0,k=s.length-1;for(;_<=w&&b<=k;)if(i[_]===null)_++;else if(i[w]===null)w--;else if(d[_]===a[b])c[b]=En(i[_],s[b]),_++,b++;else if(d[w]===a[k])c[k]=En(i[w],s[k]),w--,k--;else if(d[_]===a[k])c[k]=En(i[_],s[k]),ni(t,c[k+1],i[_]),_++,k--;else if(d[w]===a[b])c[b]=En(i[w],s[b]),ni(t,i[_],i[w]),w--,b++;else if(p===void 0&&(p=Wh(a,b,k),m=Wh(d,_,w)),p.has(d[_]))if(p.has(d[w])){let z=m.get(a[b]),Pt=z!==void 0?i[z]:null;if(Pt===null){let Xn=ni(t,i[_]);En(Xn,s[b]),c[b]=Xn}else c[b]=En(Pt,s[b]),ni(t,i[_],Pt),i[z]=null;b++}else Wr(i[w]),w--;else Wr(i[_]),_++;for(;b<=k;){let z=ni(t,c[k+1]);En(z,s[b]),c[b++]=z}for(;_<=w;){let z=i[_++];z!==null&&Wr(z)}return this.ut=a,Lr(t,c),Ft}});async function ut(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await fe().catch(()=>{})}}var Ju=()=>{ut(Qm)},Bh=()=>{ut(Gm)};function $e(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Ki()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${Ju}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Eh=new Map,Ih=Promise.resolve();function jh(t,e=""){let n=`${t}
${e}`,o=Eh.get(n);return o||(o=Ih.then(()=>Iv(t)),Ih=o,Eh.set(n,o)),o}async function Iv(t){try{let e=await Ee({kind:"glb",gauge:{file:t}}),n=Go(await e.arrayBuffer());return Gi(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var Vu=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{jh(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void pe(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];pe(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Qi(a)} />
      </svg>`,this)}};customElements.define("mould-picture",Vu);var Le=(t,e)=>r`<ul class="cards">
    ${Xr(t,({file:n})=>n,e)}
  </ul>`;function on(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{ut(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>jv(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?qv(t,s):u}
  </li>`}function jv({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Qo(n)}:void 0})}function qv(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{ut(()=>Nv(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&Qo(o.file)===e.stem,a=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{ut(()=>Uv(t,e))};return r`<div class="acts">
    ${Yr(o)} ${n.called?Ku(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Ku("Note",e,"note")} ${Ku("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!a||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{ut(()=>qh(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Hv(o,e):u}
  </div>`}function Ku(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${F(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Hv(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{ut(()=>qh(t,e,!0))}}>Remove it even so</button>
  </div>`}async function Nv(t,e){let n=await Ym(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Qo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function Uv({kind:t,one:e},{name:n,note:o,stem:i}){await Xm(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function qh(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await tf(t,n),h({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}function ta(t,e,n){let o=[...l.files?.[t.list]??[]].sort((s,a)=>Number(s.shipped)-Number(a.shipped));return o.length?Le(o,s=>on({kind:t,one:s,facts:zv(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var Hh=4;function zv({holds:t=[],changed:e}){let n=t.length-Hh,o=n>0?[...t.slice(0,Hh),`${n} more`]:t;return[o.length?Ce(o):"",e?`changed ${yt(e)}`:""].filter(Boolean)}var fs="";function ea({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(fs.trim()),fs="",ot()})},s=a=>{fs=a.target.value,ot()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${F(fs)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!fs.trim()} @click=${i}>${e}</button>
  </div>`}function we(t){let e=l.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(Jv)}
    </ul>
  </details>`:u}function Jv(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=l.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${yt(t.removed_at)}, kept until ${yt(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{ut(()=>ef(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{ut(()=>nf(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>qt("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>qt("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function Uh(){let t=Cn();return r`${$e("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${ta(je,"Each file is named by the formulas that use its fats.",e=>Vi(je,e))}
      ${t?Ph(t):u}
      ${ea({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Ch(e)):Tr(je,Uu(e,l.fats)),tried:ut})}
    </section>
    ${Vv()} ${we("fats")}`}var Nh="fats that are listed";function Vv(){let t=l.finding?.key===Nh?l.finding.text:"",e=l.fats.filter(n=>gn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${F(t)}
          @input=${n=>h({finding:{key:Nh,text:n.target.value}})}
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
          ${e.map(n=>Kv(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function Kv(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=gn(t,e),a=d=>R(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${a(i)} <small>${a(n)} to ${a(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var zh=t=>t.goes_into==="lye",Jh=({role:t})=>t==="alkali",Qv=t=>Jh(t)?"down":"nearest",ko=(t,e)=>Z(t,e,Qv(e));function na(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>zh(i)),n=({one:i})=>i.role==="water",o=({one:i})=>Jh(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Vh(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!zh(e))}function Qu(t){let e=D(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${f({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${f({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Xv(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Gv=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Kh={after:"",mass:""},Qh=3,Yv={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Qh},()=>Kh)}}};function Zv(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Xv(t){let e=Zv(t);return r`${T({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:Gv,puts:o=>({...mt(t,"",["drying","water_lost_in_cure"]),...Yv[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?tk(t):u}`}function tk(t){let e={of:t,at:"/drying/weighings",least:Qh};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(e).map((n,o)=>r`<div class="row named" id=${W(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${H(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Y(e,"One more weighing",()=>j(e,Kh,"weighing"))}`}var ek=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],oa=t=>Wn(t).map(e=>[e.id,e.name]),Gh=["unsaid","Not given"],Yh=["none","Holds none"],Zh=t=>t===void 0?"unsaid":t==="none"?"none":"some",nk=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Xh(t,e){return Gu(t,`${e}/contains_fat`,[Gh,Yh,["some","Holds fat"]],oa(t))}function Gu(t,e,n,o){let i=Zh(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${T({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:nk({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${_t({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var ok=[Gh,Yh,["some","Holds acid"],["typed","By what it takes up"]],ik={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Yu(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Zh(g(t,n));return r`${T({of:t,question:"Acid in it",at:n,chosen:o,answers:ok,puts:i=>ik[i]})}
  ${o==="some"?r`<div class="row">
          ${_t({label:"Which acid",of:t,at:`${n}/acid`,answers:ek.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Zu(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Zu(t,e,n){let o=g(t,e)===!0?"yes":"no";return T({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var sk=["tsp/lb","tbsp/lb","tsp/kg"],ia=["%","g/kg",...sk].flatMap(t=>[`${t} of fats`,`${t} of batter`]),eg=[...ia,"% of finished soap","g/kg of finished soap"];function tg(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function sa(t,e,n,o,i=!1){let s=N(t,e),[a,d]=tg(D(t,e),o),c=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&d)&&se(t,e,s,a.trim()?`${n}: of what`:n);let m=Bt(t,e),_=(b,k)=>{let z=`${b.trim()} ${k}`.trim();V(t,e,i&&!b.trim()?void 0:z),ot()},w=b=>{let k=b.target.value,[z,Pt]=tg(k,o);h({typed:{key:s,text:k}}),_(z,Pt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${F(c)}
        @input=${w}
        @blur=${rs}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${b=>_(c,b.target.value)}
      >
        <option value="" .selected=${F(d==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${F(b===d)}>${b}</option>`)}
      </select>
    </div>
    ${ht(s,m)}
  </div>`}function rk(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var ak=.01+1e-9;function ui(t,e){let{sum:n,unread:o}=rk(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=ak?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var ng=(t,e)=>Wn(t).find(n=>n.id===e)?.name??e,hs=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),ra=t=>x(hs(t));function ed(t){let e=ra(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>lk(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?ui("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:se(t,"/fats",N(t,"/fats"),"The fats")}
    ${n?ig(t):Y(hs(t),"Add a fat",()=>og(t,e.length))} ${gk(t)}
  </section>`}function lk(t,e,n){let o=`/fats/${e}`,i=ng(t,String(n[e].fat??""))||"Which fat?",s=vt(t,`${o}/fat`)??vt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${W(hs(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${N(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Xu():og(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${H(hs(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?ig(t):u}
    ${Sh(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${ck(n[e])}`,body:()=>fk(t,e)})}
  </li>`}function og(t,e){h({picking:{of:t,row:e,text:""}}),G(U("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Xu(){let t=l.picking;h({picking:void 0}),t&&G(X(t.of,t.row<ra(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function td(t,e){let{row:n}=l.picking,o=ra(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};as(hs(t),`${ng(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],X(t,`/fats/${n}/share`))}function ig(t){let{row:e,text:n}=l.picking,o=ra(t).map(m=>m.fat),i=uk(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,w=s[(_+s.length)%s.length];w&&(h({picking:{of:t,row:e,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Xu(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(b=>Ht(b.name)===Ht(n.trim())),w=a??(s.length===1?s[0]:_);m.key==="Enter"&&w&&td(t,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Xu}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,w=gn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>td(t,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{dk(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function uk(t,e){let n=Wn(t).filter(a=>gn(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(d=>gn(a,d)!==void 0).length,s=Math.max(...Wn(t).map(i));return s?Wn(t).filter(a=>i(a)===s):[]}async function dk(t,e){if(!await xr(t))return;let o=e.trim(),i=Br(o,[...l.fats,...tt("own_fats","/fats")]),s=tt("own_fats","/fats").length;V("own_fats",`/fats/${s}`,{...Kr,id:i,name:o}),td(t,i),Et("own_fats",i),G(X("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function ck(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var pk=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],mk={published:void 0,one:"",range:{low:"",typical:"",high:""}};function fk(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${T({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:pk,puts:d=>mk[d],hint:hk(t,D(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Zu(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function hk(t,e){let n=Wn(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function gk(t){let e=Zi(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=D(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var _k=t=>pt.includes(t);function aa(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:oi().some(({of:e,at:n})=>ge(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function gs(){let t=l.complaint?oi():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>$k(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function $k({of:t,id:e,folds:n}){for(let o of n)at(o);h({has_asked:!0}),_k(t)?(l.view!=="formula"||l.formula_of!==t)&&Qt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>G(U(e)))}var sg="danger-of-superfat";function nd(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Bn(t).length?sg:void 0})}
    </div>
    ${is(t,sg)} ${wk(t)} ${Tk(t,e)}
  </section>`}function wk(t){let e=tt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${T({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>bk(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>yk(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${ui("The two",e.map(i=>i.share))}
        </p>`:u}`}function bk(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function yk(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=vt(t,i)??vt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${vk(e.purity_range)}`,body:()=>kk(t,i)})}
  </div>`}var vk=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function kk(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${T({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var xk={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function Tk(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(xk);return r`${T({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:Sk(e)})}
    <div class="row">${n.map(s=>Rk(t,s))}</div>`}function Rk(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function Sk(t){if(!(!t||l.is_old))return`It now makes a strength of ${R(t.lye_strength_percent,1)} %; ${R(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(t.water_percent_of_fats,1)} % of the fats.`}function Hn(t,e,n){let o=Dk(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${Ok(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${rg(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>Pk(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function Dk(t,e){let n=tt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var od={name:"",share:""},Ak={unsaid:void 0,one:"",many:[od]};function Ok(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...od,name:o}]:Ak[a];return r`${T({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${rg(t,e,"INCI name","One more INCI name")}`:u}`}function Pk(t,e,n){return T({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function rg(t,e,n,o,i){let s={of:t,at:e};return r`${x(s).map((a,d)=>r`<div class="row named" id=${W(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${H(s,d,String(a.name||`${n} ${d+1}`))}
      </div>`)}
  ${Y(s,o,()=>j(s,od,n))}`}var Mk=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:Nk},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Bk},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Ek},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Ik}];function id(t){return Mk.map(e=>{let n={of:t,at:`/${e.list}`},o=x(n),i=(s,a)=>r`<li class="formula-row" id=${W(n,a)}>
        ${Ck(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Y(n,e.add,()=>j(n,Fk(e),e.add.replace("Add ","")))}
    </section>`})}function Fk(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function Ck(t,e,n,o,i){let s=`/${e.list}/${i}`,a=vt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:sa(t,`${s}/rate`,"How much",ia)}
      ${H(n,i,d)}
    </div>`}function ag(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return T({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function lg(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${ag(t,e,Wk,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?T({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:Lk,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Lk=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Wk=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function sd(t,e,n){let o=(a,d,c)=>a?`${d}${String(a)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${sa(t,`${e}/limit`,"The most that the supplier's document allows",eg,!0)}`})}function rd(t,e,n,o){let i=(a,d)=>a===void 0?"":a==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Xh(t,e)} ${o?Yu(t,e):u}`})}var la=(t,e,n)=>Hn(t,e,String(n.name||"it"));function Bk(t,e,n){return r`${lg(t,e,!0)}
    <div class="folds">${rd(t,e,n,!0)} ${sd(t,e,n)} ${la(t,e,n)}</div>`}function ug(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>lg(t,e,!1)})}function Ek(t,e,n){return r`<div class="folds">
    ${sd(t,e,n)} ${la(t,e,n)} ${ug(t,e,n)} ${rd(t,e,n,!1)}
  </div>`}function Ik(t,e,n){return r`${qk(t,e)}
    <div class="folds">
      ${sd(t,e,n)} ${la(t,e,n)} ${ug(t,e,n)} ${rd(t,e,n,!0)}
    </div>`}var jk=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function qk(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${T({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${_t({label:"Which oil",of:t,at:`${n}/fat`,answers:oa(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:jk,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var Hk=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function Nk(t,e,n){let o=(i,s,a)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${zk(t,e,n)}
    ${ag(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Vk(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>Uk(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Yu(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${la(t,e,n)}
    </div>`}function Uk(t,e){let n=g(t,e)===!0?"ice":"liquid";return T({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function zk(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...mt(t,e,["replaces","rate"]),[s]:""});return r`${T({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Jk,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?sa(t,`${e}/rate`,"Rate",ia):u}`}var Jk=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Vk(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${T({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Gu(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...oa(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${_t({label:"Built-in figures of",of:t,at:n,answers:Hk.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var _s=()=>Object.keys(g("studio","/cups")??{}),$s=()=>_s().length===1?{net:""}:_s().length?{cup:"",net:""}:{holds:"",net:""},dg="\0another";function ws(t,e="Cup holds"){let n=`${t}/holds`,o=_s();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?Kk(t):u}`;let i=a=>a===dg?B("run","Another cup",t,{...ad(t),holds:""},X("run",n)):B("run",`Cup: ${a}`,t,{...ad(t),cup:a}),s=a=>D("studio",`/cups/${L(a)}`);return _t({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[dg,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function ad(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var Kk=t=>r`<button type="button" @click=${()=>B("run","A cup of the studio",t,ad(t))}>
    A cup of my studio
  </button>`;function pg(){return st()?r`<div class="row">
    ${_s().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${L(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Qk()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Qk(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||cg();e.value="",B("studio",`${n} added`,`/cups/${L(n)}`,"",X("studio",`/cups/${L(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${cg()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function cg(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!_s().includes(e))return e}}var Gk=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),ld=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function ua(t){let{run:e}=ld(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${st()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${qn("How warm",[ld(t)])} ${C("run",e)} ${Yk(t)}`})}function Yk(t){let{run:e,studio:n}=ld(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Ot(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${_t({label:"The lye cools in",...us(a),answers:Gk,unsaid:"not given",optional:!0})}
  </div>`}var ae=()=>$(l.run.now,"/pipe")!==void 0;function mg(){let t=e=>{let n=A(e,"/pipe",{formula:"",fills_headspace:"",whip:$s()});return st()?n:A(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};at("set-up pipe"),re("run","Topping added",t,U("lane-pipe"))}function Zk(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:A(o,i,void 0),t)}function Xk(){re("run","Topping removed",Zk,U("topping-back"))}function fg(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||ae()?u:r`<button type="button" id="topping-back" @click=${Ji}>Bring the topping back</button>`}function ud(){return r`${rx()} ${ua("pipe")}
    <p class="choice"><button type="button" @click=${Xk}>Take the topping away</button></p>`}var tx=["trials","beads","envelope"];function dd(t){return tx.every(e=>g("run",`/pipe/${e}`)===void 0)&&se("run","/pipe",`${N("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${C("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Ut({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:$s()},body:ex})}
      ${Ut({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:nx})}
    </div>
    ${Ut({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:xh,body:()=>Th(t)})}
    ${t?ix(t):u}`}function ex(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${H(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more trial",()=>j(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${ws("/pipe/trials/weigh_cup")}
    </div>
    ${C("run","/pipe/trials/weigh_cup")}`}function nx(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${T({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var ox={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function ix(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>M({key:`pipe.by.${i}`,label:ox[i],note:o(a),shown:At(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${sx(t)}`}function sx(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=R(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>B("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function cd(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${ws("/pipe/whip")}
    </div>
    ${C("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function rx(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Ut({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function ax(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function bs(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,ax(t,e))}>It is really so: keep it</button>`:u}var md=500,lx=()=>$(l.run.now,"/cut")===void 0&&ux()>=md,ux=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0,da={run:"/cut/kerf",studio:"/kerf"};function hg(t){at("set-up cut"),B("run","Cut","/cut",{bar:pd[t],...st()?{}:{kerf:""}},X("run",`/cut/bar/${Object.keys(pd[t])[0]}`))}function dx(){B("run","Left whole","/cut",void 0,U("cut-into-bars"))}function gg(){return lx()?r`<button type="button" id="cut-into-bars" @click=${()=>hg("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>hg("slab")}>Cut it into bars</button>`:u}var pd={loaf:{thickness:""},slab:{length:"",width:""}};function cx(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var px={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function _g(){let t=cx(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return r` ${T({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>pd[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Ot(da,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${qn("Kerf",[da])}</p>
    ${t?T({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:px[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${dx}>Leave it whole</button>`}var ca=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function pa(t,e,n){return r`<div class="field short">
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
  </div>`}function mx({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,d=a-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Qi(e,a))}${p("side",Qi(t.loops))}
    </svg>
  </div>`}function di(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${mx(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${O(At(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${O(At(l.units,i.total_ml))} together`:u},
      ${O(St(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${O(At(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var fx={mm:"in",g:"oz","\xB0C":"\xB0F"},hx={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ma(t,e,n=""){let o=fd(t);if(o)return o.unit??"";let i=Ke($(I(),t));return hx[e]?.test(i)?i:n||(l.units==="us"?fx[e]??e:e)}var fa=()=>h({typed:void 0}),ci=t=>`d${t.replaceAll("/","-")}`,fd=t=>l.typed?.key===ci(t)?l.typed:void 0,ha=t=>fd(t)?.text??String($(I(),t)??"");function Nn(t){let{complaint:e}=nt();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function hd(t,e,n,o){let{pointer:i}=t,s=a=>{let d=a.target.value,c=t.unit?ma(i,t.unit,t.unit_before):"";h({typed:{key:ci(i),text:d,unit:c}}),xt(i,gx(t,d,c))};return r`<input
    id=${ci(i)}
    .value=${F(ha(i))}
    @input=${s}
    @blur=${fa}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Nn(i)?"true":"false"}
  />`}function gx(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Qe(e)?`${e.trim()} ${n}`:e}function le(t,e){let n=ci(t.pointer),o=Nn(t.pointer),i=_x(t.pointer)??t.hint,s=t.unit?` (${ma(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${hd(t,o||i?`${n}-said`:void 0,e)}
    ${ht(n,o,i)}
  </div>`}function _x(t){let e=$(I(),t),n=fd(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function ga(t){let e=t.toLowerCase(),{file:n,shipped:o}=nt().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function ys(t){let{open:e}=nt();try{if(await He(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Vs()})}catch(n){if(!(n instanceof v))throw n;return yu(n)}l.run.file&&(De(),dt()),t(e.file)}var bn="/shape/points",$g=500,Un=(t,e)=>[bn,t,...e?[e]:[]].join("/"),wg=t=>Array.from({length:t.least},()=>({}));function bg(t){let e=te(I(),bn),n=wx(),{complaint:o}=nt(),i=o?.field===bn&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${ma(Un(-1,s.name),s.unit,yg(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>$x(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=$g} @click=${()=>$a(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function $x(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=bx(e),s=a=>{let{name:d,label:c,unit:p}=t.columns[a],m={label:c,pointer:Un(e,d),unit:p,unit_before:yg(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return hd(m,i?`point-${e}-said`:void 0,yx(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>$a(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>vg(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function wx(){let t=[...Bi(I()),...rr(I())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function bx(t){let{complaint:e}=nt();return Nn(Un(t))??(e?.about===Un(t)?e.line:void 0)}function yg(t,e,n){let o=(i,s)=>Ke($(I(),Un(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function _a(t,e){queueMicrotask(()=>document.getElementById(ci(Un(t,e)))?.focus())}function $a(t,e){let n=[...te(I(),bn)];n.length>=$g||(n.splice(e,0,{}),fa(),xt(bn,n),_a(e,t.columns[0].name))}function vg(t,e,n=0){let o=te(I(),bn).filter((i,s)=>s!==e);fa(),xt(bn,o.length?o:[{}]),_a(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function yx(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!ha(Un(e,o))&&!ha(Un(e,i));if(s.key==="Enter"&&s.shiftKey)$a(t,e+1);else if(s.key==="Enter"&&n===0)_a(e,i);else if(s.key==="Enter"&&e+1<te(I(),bn).length)_a(e+1,o);else if(s.key==="Enter")$a(t,e+1);else if(s.key==="Backspace"&&a&&te(I(),bn).length>1)vg(t,e,e>0?1:0);else return;s.preventDefault()}}var gd={weighings:[""]},_d=/\.(3mf|gltf|glb)$/i;function wa(t){let e=Sn(t);return e?{kind:t,points:wg(e)}:{kind:t}}var vx=()=>xt("/water",gd),sn=t=>ve(I(),t),vs=()=>Wi(I());function kg(t){let{open:e,answer:n,is_old:o}=nt();return r`${tn(e,()=>{ys(t)})} ${en(e)}
    ${e.shipped?u:li(l.files?.moulds.find(i=>i.file===e.file))}
    ${sn("shape")&&sn("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${sn("shape")?lt("Shape",vs(),Object.entries(Np),kx):u}
    <div class="beside ${Sn(vs())?"rows":""}">
      <div>
        ${$d()} ${sn("shape")?Tx():u} ${sn("mesh")?Rx():u}
        ${wd()} ${sn("water")?Dx():u} ${Ox()}
      </div>
      <div class="stays">${di(n,o,Tg())} ${Px(t)}</div>
    </div>`}function kx(t){let e={...nt().shapes,[vs()]:I().shape};y(nt(),{shapes:e,answer:void 0}),xt("/shape",e[t]??wa(t))}function xx(){let{shipped:t,file:e}=nt().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function $d(){let t=xx();return le({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function Tx(){let t=vs(),e=Sn(t);return r`${Fo(t).length?r`<div class="row">
          ${Fo(t).map(n=>le({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?bg(e):u}`}function wd(t=xl(I())){return r`<div class="row">
      ${t?u:le({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${le({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${le({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${le({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var bd=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],yd=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function Rx(){let t=o=>String($(I(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=Nn(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${lt(o,t(i),s,d=>xt(`/mesh/${i}`,d||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Nn("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${_d.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",bd)} ${e("Which way is up","up",yd)}
    ${t("role")==="body"?Sx():u}
    <div class="row">
      ${le({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${le({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function Sx(){let t=$(I(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${lt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>xt("/mesh/on_board",e==="yes"?!0:void 0))}`}function Dx(){let t=$(I(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>xt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(I(),"/water/weighed_in"),i=e===void 0||e==="brim"?Nn("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${le({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${lt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?le({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?le({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${lt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>xt("/water/weighed_in",s))}
    <div class="row">
      ${te(I(),"/water/weighings").map((s,a)=>le({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},Ax(a)))}
    </div>
    ${nt().complaint?.field==="/water/weighings"?r`<p class="complaint">${nt().complaint.line}</p>`:u}
    <button type="button" @click=${xg}>One more round</button>`}function xg(){let t=te(I(),"/water/weighings").length;xt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var Ax=t=>e=>{e.key==="Enter"&&(t+1===te(I(),"/water/weighings").length?xg():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function Ox(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${sn("shape")?u:t("Add measures, as a check",()=>xt("/shape",wa("block")))}
    ${sn("shape")&&sn("mesh")?t("Leave the measures out",()=>xt("/shape",void 0)):u}
    ${sn("water")?t("Leave the water out",()=>xt("/water",void 0)):t("Add weighed water",vx)}
  </div>`}function Tg(){let t=rr(I()).length;return t?[...Ei(I()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Ei(I())}function Px(t){let e=String(I().name??"").trim(),n=ga(e),{open:o,answer:i,is_old:s,complaint:a}=nt(),d=i&&!s&&!a&&!Tg().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ys(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${vd(e,n)}
    ${a?r`<p class="alarm" role="status">${Mx(a.field)}${a.line}</p>
            ${bs(I(),a.keep,xt)}`:u}`}var vd=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function Mx(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Fo(vs()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Fx=200*2**20;async function Rg(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),xt("/name",t.name.replace(/\.\w+$/,"")),t.size>Fx){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await ap(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await Dg(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function Dg(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Yo({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof v))throw a;if(e!==t.questions)return;let d=o?t.sizes:Bx(a.complaint),c=d.length&&!o?void 0:Q(a.complaint);y(t,{sizes:d,complaint:c,is_measuring:!1})}}async function Cx(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await np({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:Q(s.complaint)})}}function Lx(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(Wx)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{Cx(t)}}>List every defect of the mesh</button>`}var Wx=({text:t})=>r`<li>${t}</li>`;function Bx({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function kd(t,e){y(t,e),Dg(t)}function Ag(t,e){let n=a=>{let d=a.target;Rg(d.files?.[0]),d.value=""},o=a=>{a.preventDefault(),Rg(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?Ex(l.mesh,t,e):u}`}function Ex(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!_d.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${lt("Unit of the file's numbers",t.unit,i,s=>kd(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?Lx(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${lt("Role",t.role??t.answer?.gauge.role,bd,s=>kd(t,{role:s}))}
            <h4>Which way is up</h4>
            ${lt("Up",t.up??"",yd,s=>kd(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${di(t.answer)} ${Ix(t,e,n)}`:u}`}var Og=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function Ix(t,e,n){let o=String(I().name??"").trim(),i=ga(o),s=o&&!i&&!t.is_keeping;return r`${$d()} ${wd(Og(t))} ${vd(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>Sg(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Sg(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Sg(t,e,n){y(t,{is_keeping:!0});try{let o=jx(t,await lp(t.upload,Hx(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await qx(o))return e(o);Xo(o,"mesh",nt().title),await ys(n),y(t,{complaint:l.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function jx(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=I();return{...i,...Og(t)||o===void 0?{}:{cavities:o},mesh:n}}async function qx(t){try{return await Tn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var Hx=t=>Co(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var ba={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Pg={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Mg(t){Je();let e={...Pg,shape:wa("block")};t==="mesh"?Xo(Pg,"mesh",ba[t]):Xo(t==="water"?{...e,water:gd}:e,"form",ba[t]),va()}async function Fg(t,e){Je(),await Lf(t,e),va()}async function ya(t){Je(),await Wf(t),va()}function Nx(t){Xo(t,"form","More about this mould"),va()}function va(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Cg(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Ag(t,Nx):kg(t)}
  </section>`}var xd=()=>h({chosen_mould:void 0});function ks(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};h({chosen_mould:i}),Ux(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Ux(t){try{y(t,{answer:await Yo({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var zx=t=>l.files?.moulds.find(e=>e.file===t);function Lg(t,e){let n=()=>e(async()=>{await Fg(t.file,t.shipped),xd()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Yr(zx(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?di(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:Kx(t,e)}
    </div>
  </section>`}var Wg=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=md;function Jx(t){let e=Wg(t)?t.slice.trim():"";return Qe(e)?`${e} mm`:e||void 0}var Vx=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${F(t.slice)}
      @input=${e=>y(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function Kx(t,e){let n=ca(t.sell),o=Jx(t),i=s=>()=>e(()=>Pr({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${pa("mould-sell",t.sell,s=>y(t,{sell:s}))}
      ${Wg(t)?Vx(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function xs(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:a}=l;if(t!=="reading")return ln(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&a?{name:"chosen",file:a.file,of:a}:t==="order"?{name:t,file:n?.open.file,of:n}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:Oi[o],file:e.file,of:e}}async function Eg({name:t,file:e}){if(!(!(t===Oi.apart&&l.formulas.apart?.file===e)&&!await Mr()))try{await Qx(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Qx(t,e=""){let n=t;if(ln(n))return Bg(e,n);let o=["pour","pipe"].find(i=>Oi[i]===t);if(o){await Bg(e,"formula"),l.view==="formula"&&Qt(o);return}if(t===Oi.apart)return ns(e);if(t==="order")return os(e);await Gx(t,e)}async function Bg(t,e){t===l.run.file||!t?h({view:l.run.file?e:"runs",typed:void 0}):await ze(t,e)}async function Gx(t,e){let n=t;xd(),Je(),h({view:ce(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=fr(Vt).find(i=>i.id===e);t==="describing"&&o&&await ya(o),t==="chosen"&&ks(e),Yx()}async function Yx(){try{await fe(),Dr()}catch(t){if(!(t instanceof v))throw t;h({list_complaint:t.message})}}var ue={id:""},jt,Td=!1,Sd=new Map,ka=JSON.parse(sessionStorage.getItem("left")??"{}");function jg(){let t=xs();Td||!t||jt&&Ie(jt)===Ie(t)||(xa(),qg(t))}function qg(t){let e=!jt||jt.name===t.name&&jt.of!==void 0&&jt.of===t.of;if(jt=t,e)return pi();ue={id:crypto.randomUUID(),before:location.hash},Sd.set(ue.id,t.of),history.pushState(ue,"",Ie(t)),requestAnimationFrame(Xx)}function pi(){jt&&(ue.id||(ue={id:crypto.randomUUID()}),Sd.set(ue.id,jt.of),history.replaceState(ue,"",Ie(jt)))}var Zx="button, input, select, summary, a[href], [tabindex]",Rd=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Hg=t=>[...document.querySelectorAll(`#main :is(${Zx})`)].filter(e=>Rd(e)===t);function xa(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?ka[ue.id]={scroll:scrollY}:ka[ue.id]={scroll:scrollY,words:Rd(t),nth:Hg(Rd(t)).indexOf(t)}}function Xx(){scrollTo(0,0),document.activeElement?.closest("#main")||Ng()}function Ng(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Ug(){let{scroll:t,words:e,nth:n=0}=ka[ue.id]??{scroll:0},o=e===void 0?void 0:Hg(e)[n];o?o.focus({preventScroll:!0}):Ng(),scrollTo(0,t)}var yn=t=>zg({name:t,file:ln(t)?l.run.file:void 0});async function zg(t){xa(),await Dd(t,()=>{let e=xs();e&&!(jt&&Ie(jt)===Ie(e))&&qg(e)})}async function Dd(t,e){Td=!0;try{await Eg(t)}finally{Td=!1,e()}}function Jg(t){ue.before===Ie(t)?history.back():zg(t)}var Ig=Promise.resolve();function tT(t,e){xa();let n=()=>history.state?.id!==t?.id;Ig=Ig.then(async()=>{if(!e)return pi();if(n())return;let o=t?Sd.get(t.id):void 0,i=[l.run,l.formulas.apart,l.order].find(s=>s&&s===o);await Dd(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{jt=xs(),!n()&&(ue=t??{id:crypto.randomUUID()},pi(),requestAnimationFrame(Ug))})})}function Vg(){history.scrollRestoration="manual",addEventListener("popstate",t=>{Hc()||tT(t.state,dl(location.hash))}),addEventListener("pagehide",()=>{xa(),sessionStorage.setItem("left",JSON.stringify(ka))})}async function Kg(){let t=dl(location.hash);t&&(ue=history.state??{id:""}),await Df(cp(t)),t&&eT(t)&&await Dd(t,()=>{jt=xs(),pi(),requestAnimationFrame(Ug)}),await Af()}var eT=t=>!jt||Ie(jt)===Ie(t);function mi(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=aa()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${vn(e.field)}${Q(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${Od}>Ask again</button>`:u}
              ${ge("run")?bs(l.run.now,e.keep,(n,o)=>V("run",n,o)):Ad(e)}
              ${nT()?r`<button type="button" @click=${Pd}>Go to the field</button>`:u}`:u}
    </div>
    ${gs()}`}function Ad({keep:t}){let{studio:e}=l.beside;return e&&ge("studio")?bs(e.now,t,(n,o)=>V("studio",n,o)):u}function vn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function Od(){dt(),l.run.failed&&Ne()}function nT(){if(Qg())return!0;let t=Ye();return t?document.activeElement!==t:oT()}var oT=()=>l.view!=="set-up"&&ge("run")&&l.complaint!==void 0&&l.complaint.field!=="",Qg=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&ge(t));function Pd(){let t=Ye(),e=Qg();if(t)return Nt(t);e?Qt(e):yn("set-up"),iT(()=>Nt(Ye()))}function iT(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Gg=()=>[...pr().map(t=>tn(t)),...cr().map(en)];function Yg(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Gg()}${mi()}
      <p>Reading the formula ...</p>
      ${Fd(t)}`;let n=l.plan&&ai(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Gg()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${sT(t)}</p>
    <div class="choice">${Fd(t)}${t==="apart"?rT():u}</div>
    ${li(l.files?.formulas.find(i=>i.file===e.file))} ${aT(t,o,n)} ${Xg(t)}
    ${ed(t)} ${nd(t,o)} ${id(t)} ${Qu(t)}
    <div class="choice">${Fd(t)}</div>`}var Zg=t=>[Xg(t),ed(t),nd(t,void 0),id(t),Qu(t)],Md=()=>String(l.run.now.name??l.run.file);function sT(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${Md()}".${n}`:o?`Base and topping of "${Md()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${Md()}".${n}`}function Fd(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Jg(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function rT(){return r`<button type="button" @click=${()=>{hu("pour")}}>Use it as the base</button> ${ae()?r`<button type="button" @click=${()=>{hu("pipe")}}>Use it as the topping</button>`:u}`}function aT(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...lT(t,n),...uT(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?jn(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${dT(t)}
  </section>`}function lT(t,e){let n=t==="pipe"?Nu(e,e.whippings[0]):"";return n?[["For one whipping",n]]:It(e.whole)?[["For one batch",nn(e.whole,e.batch)]]:[]}function uT(t,e){let n=Bn(t).length?" \u26A0":"";return[["Fats",O(E(l.units,e.fats_g))],["Superfat as weighed",`${Gt(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...na(e).map(({one:o})=>[o.name,O(ko(l.units,o))])]}function dT(t){let e=aa()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${gs()}`;let n=ge(t),o=n&&e.field!==""&&document.activeElement!==Ye();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${vn(e.field)}${Q(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${Od}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>Ye()?.focus()}>Go to the field</button>`:u}
    </div>
    ${gs()}`}function Xg(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Cd=t=>y(l.new_formula,t);function t_(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>ut(async()=>{await i(t.trim()),Cd({name:"",copied:""})});return r`${$e("Formulas")}
    <section aria-label="Formulas">
      ${Le(n,cT)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${F(t)}
            @input=${i=>Cd({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Pf)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Cd({copied:i.target.value})}
          >
            <option value="" .selected=${F(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${F(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Mf(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${we("formula")}`}function cT(t){let e=t.changed?[`changed ${yt(t.changed)}`]:[];return on({kind:Lo,one:t,facts:e,open:()=>ns(t.file)})}function pT(t){Je(),ks(t,`Saved in ${t}.`)}function e_(){let{chosen_mould:t}=l;return r`${$e("Moulds")}
  ${t?Lg(t,ut):Cg(pT)??r`${gT()} ${mT()}`}`}function mT(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Le([...t,...e],fT)} ${we("mould")}
  </section>`}function fT(t){let e=t.shipped?hT(t.file):wT(t.file),n=()=>Promise.resolve(ks(t.file));return on({kind:Vt,one:t,facts:e,picture:t.file,open:n})}var hT=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${O(At(l.units,e.brimful_ml))}, ${K(e.cavities,"cavity","cavities")}; ${e.description}`);function gT(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${_T()}
    <div class="choice">
      ${Object.entries(ba).map(([t,e])=>r`<button type="button" @click=${()=>Mg(t)}>${e}</button>`)}
    </div>
  </section>`}function _T(){return fr(Vt).map(t=>{let e=String(wt(t.text)?.name??"").trim()||$T(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>ut(()=>ya(t))}>Continue</button>
        <button type="button" @click=${()=>{An(Vt,t.id),ot()}}>Discard it</button>
      </div>
    </div>`})}var $T=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function wT(t){let e=pf(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[O(At(l.units,e.brimful_ml)),K(e.cavities,"cavity","cavities")]:["measuring ..."]}var bT=300,yT=1e3;function Ta(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&vT();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Wd(){l.quoted&&h({quoted:{...l.quoted,of:void 0}})}var Ts,Ld=!1;function vT(){let{plan:t,quote_wish:e}=l;Ld||Ts?.of===t&&Ts?.wish===e||(window.clearTimeout(Ts?.timer),Ts={of:t,wish:e,timer:window.setTimeout(()=>{xT()},l.quoted?bT:0)})}var Ra=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function n_(t,{numbers:e="",by:n,figure:o}){let i=Ra(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Sa=()=>n_({file:l.run.file,run:l.run.now},l.quote_wish);function kT(t,{numbers:e=""}){return t.field==="/sell"&&Ra(e)?{...t,file:"",field:"sell"}:t}async function xT(){Ts=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){Ld=!0;try{let s=await Xc(n_(n,o));t===l.run&&h({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof v))throw s;if(t!==l.run)return;let a=kT(s.complaint,o);h({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:a}}),s.may_pass&&window.setTimeout(Wd,yT)}finally{Ld=!1}}}var TT=300,RT=1e3,Ed=t=>{let{by:e,figure:n}=l.quote_wish;return[t.open.now,t.open.file,t.times,e,n,l.plan,po()]},o_=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function i_(){let t=Wt(),{quoted:e}=t;if(!fn(t.open.now)||t.open.theirs)return{is_old:!0};let n=o_(e?.of,Ed(t));!n&&!l.is_old&&ST(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:l.is_old||!n||o!==void 0}}function Id(){let{quoted:t}=Wt();t&&y(Wt(),{quoted:{...t,of:[]}})}function jd({open:t,times:e}){let{by:n,figure:o}=l.quote_wish,i=Ra(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Da,Bd=!1;function ST(t){let e=Ed(t);Bd||o_(Da?.of,e)||(window.clearTimeout(Da?.timer),Da={of:e,timer:window.setTimeout(()=>{DT(t)},t.quoted?TT:0)})}async function DT(t){if(Da=void 0,t===l.order){Bd=!0;try{if(await Ue(),await mn(),await jo(),!fn(t.open.now))return;let e=Ed(t);await AT(t,e)}catch(e){if(!(e instanceof v))throw e}finally{Bd=!1,y(t,{})}}}async function AT(t,e){try{y(t,{quoted:{of:e,quote:await tp(jd(t))}})}catch(n){if(!(n instanceof v))throw n;y(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===l.order&&Id(),RT)}}var fi={of:"order",at:"/lines",in_order:!0,stays:!0};function s_(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${f({of:"order",label:"For",at:"/for",optional:!0})}
      ${f({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${f({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${C("order","/lines")} ${x(fi).map((t,e)=>OT(e))} ${PT()}
  </section>`}var r_=()=>(l.files?.runs??[]).filter(({shipped:t})=>!t);function a_(t){let e=cn(Wt().open.file,t);return l.files?.runs.find(n=>n.file===e)}var l_=t=>a_(t)?.name||t;function u_(t){let e=Pn(Wt().open.now).map(({run:n})=>n);return r_().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function OT(t){let{run:e}=Pn(Wt().open.now)[t]??{run:""},n=`/lines/${t}`,o=a_(e)?.pieces,i=e?l_(e):`line ${t+1}`;return r`<div class="row" id=${W(fi,t)} role="group" aria-label=${i}>
    ${_t({of:"order",label:"Run",at:`${n}/run`,answers:u_(e),unsaid:"choose ..."})}
    ${f({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${K(o,"piece")}`})}
    ${x(fi).length>1?f({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${H(fi,t,i)}
  </div>`}function PT(){let t=u_();return r_().length?t.length?r`<div class="row">
    ${_t({of:"order",label:x(fi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&j(fi,{run:e},l_(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var MT=300,FT=1e3,d_=()=>new Date().toDateString(),CT=()=>({file:l.run.file,run:l.run.now});function LT(){let{run:t,plan:e}=l;return{known:l.run_days,rests_on:()=>[l.plan,d_()],is_ready:e!==void 0&&!l.is_old,written:()=>Promise.resolve(),question:()=>l.planned??CT(),is_open:()=>t===l.run,keep:n=>h({run_days:n})}}function WT(){let{order:t}=l;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,l.plan,po(),d_()],is_ready:fn(e.now)&&!e.theirs&&!l.is_old,written:async()=>{await Ue(),await mn(),await jo()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===l.order,keep:n=>y(t,{days:n})}}var Aa=t=>t==="run"?LT():WT(),c_=t=>Aa(t).question(),p_=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Oa(t){let e=Aa(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=p_(n?.of,e.rests_on());!i&&o&&BT(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Nd(t){let e=Aa(t);e?.known&&e.keep({...e.known,of:[]})}var qd=new Map,Hd=new Set;function BT(t,e){let n=e.rests_on(),o=qd.get(t);Hd.has(t)||p_(o?.of,n)||(window.clearTimeout(o?.timer),qd.set(t,{of:n,timer:window.setTimeout(()=>{ET(t)},e.known?MT:0)}))}async function ET(t){qd.delete(t);let e=Aa(t);if(e?.is_ready){Hd.add(t);try{await e.written(),await IT(t,e)}catch(n){if(!(n instanceof v))throw n}finally{Hd.delete(t),h({})}}}async function IT(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let a=n();try{let d=await ep(o());i()&&s({of:a,days:d})}catch(d){if(!(d instanceof v))throw d;if(!i())return;s({of:a,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Nd(t),FT)}}var Kd=864e5,zn=t=>Math.round(Date.parse(`${t}T00:00Z`)/Kd),m_=t=>new Date(t*Kd).toISOString().slice(0,10),jT=t=>new Date(t*Kd).getUTCDay()===1,zd=40,Jd=18,qT=7,Vd=class{#n;#t;constructor({calendar:e}){this.#n=zn(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(zn(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(jT);return e.filter((n,o)=>o%Math.ceil(e.length/qT)===0).map(m_)}is_at_end=e=>zn(e)-this.#n>.88*this.#t};function f_(t){let e=new Vd(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${Tt(n[0].day)} to ${Tt(n.at(-1).day)}</p>
    ${Ud(t,e,20,zT(e))}
    <p>Hours of your making days</p>
    ${Ud(t,e,zd+2,JT(t,e))}
    ${t.batches.map(o=>r`<p>${YT(t,o)}</p>
          ${Ud(t,e,Jd+6,VT(t,e,o))}`)}
    <figcaption>${XT(t)}</figcaption>
  </figure>`}var Ud=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${HT} ${UT(t,e)}
      ${e.mondays().map(i=>S`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${NT(t).map(i=>S`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,HT=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,NT=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),UT=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),zT=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>S`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${rh(e)}</text>`);function JT({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,a)=>{let d=zd*a/n;return S`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+zd-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:a})=>S`${o("free",i,s)} ${o("used",i,a)}`)}function VT(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,a=(p,m,_)=>{let w=zn(_)-zn(m);return S`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(w)} height=${Jd} />`},d=o===i,c=(p,m)=>GT(t,p,n).map(_=>S`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Jd/2} r=${m} />`);return S`${a("mould",o,d?m_(zn(o)+1):i)}
    ${zn(i)<zn(s)?a("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var KT=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),QT=({lyes:t},e)=>t.filter(({batches:n})=>n.some(({of:o,runs:i,batch:s})=>o===e.of&&i.join()===e.runs.join()&&s===e.batch)).map(({made:n})=>n);function GT(t,e,n){let o=t.days.filter(({acts:i})=>i.some(s=>s.act===e&&KT(s,n)));return[...new Set([...o.map(({day:i})=>i),...e==="chill"?QT(t,n):[]])]}function YT({asked:t,batches:e},n){let o=({of:a,runs:d})=>a===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:a})=>a.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var ZT=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,Rs=t=>S`<rect class=${t} x="1" y="1" width="24" height="18" />`;function XT({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:a})=>a===i));return[[!0,Rs("used"),"hours used"],[!0,Rs("free"),"hours free"],[!0,Rs("mould"),"in the mould"],[!0,Rs("cure"),"curing"],[t.some(({off:i})=>i),Rs("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>ZT(i,s))}var t0=({cautions:t})=>t.filter(({severity:e})=>e!=="danger").map(({severity:e,text:n})=>e==="note"?r`<p>${Ge(n)}</p>`:r`<p class="minded"><strong>Caution</strong> ${Ge(n)}</p>`),Ss=(t,e,n="")=>r`<tr>
    <th scope="row">${t}</th>
    <td><b>${O(e)}</b></td>
    <td>${n}</td>
  </tr>`;function e0(t){let{units:e}=l,{made:n,for:o,lye_of:i,pot:s}=t,a=s.full_pot_g===null?"":`with its pot ${O(Z(e,{g:s.full_pot_g,g_text:s.full_pot_g_text,oz_text:s.full_pot_oz_text}))}`;return r`<h3>One pot of lye solution, made on the evening of ${Tt(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${Ge(o)};
      ${R(s.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Ss("Water, distilled",Z(e,ft(s,"water_")))}
        ${s.alkalis.map(d=>Ss(d.name,Z(e,ft(d,""),"down")))}
        ${Ss("Lye solution in the pot",Z(e,ft(s,"lye_")),a)}
        ${s.shares.map(d=>r`${Ss(`Out of it for ${d.batter}`,Z(e,ft(d,"lye_"),"down"),`superfat then ${Gt(d.superfat_percent)}`)}
            ${d.top_up_g>0?Ss(`and plain water to ${d.batter}`,Z(e,ft(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${t0(t)}`}var h_=({lyes:t})=>t.map(e0),g_=({lyes:t,notes:e})=>[...new Set([...t.flatMap(({cautions:n})=>n),...e].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var xo=t=>y(l.printing,t);function __(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function $_(t){if(!l.printing.is_working){xo({is_working:!0,told:"Making it ...",on:l.view});try{await n0(),xo({told:await t()})}catch(e){xo({told:e instanceof Error?e.message:String(e)})}xo({is_working:!1})}}async function n0(){await Ue(),await mn();let t=l.view==="order"?l.order?.open:void 0,e=pn("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var Jn=()=>l.printing.on===l.view?l.printing.told:"",Yt=(t,e)=>()=>$_(async()=>{let n=URL.createObjectURL(await Ee(e));return __(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),o0=t=>()=>$_(async()=>(__(await rp(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),i0=t=>{xo({paper:t}),localStorage.setItem("paper",t)},Pa=()=>lt("Paper",l.printing.paper,[["A4","A4"],["Letter","Letter"]],i0),zt=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${l.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,rn=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${zt(`${t}, to print`,o0({kind:e,...o}),s,i)}
  ${l.files?.makes_pdf?zt(`${t}, PDF`,Yt(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,Vn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var an={run:"/money/currency",studio:"/currency"},Ma={run:"/money/prices",studio:"/prices"},We=()=>Ze(an)!==void 0;function hi(){let[t,e]=[g("run",an.run),g("studio",an.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[an,Ma]}var Fa=()=>D("studio",an.studio)||String(Ze(an)??"");async function w_(t,e=""){if(t==="run"||!l.order)return;let{open:n}=l.order,o=Pn(n.now).map(({run:s})=>cn(n.file,s)),i=o.find(s=>Ca(s,e))??o[0];(!o.includes(l.run.file)||o.some(s=>Ca(s,e)))&&await ze(i,"set-up")}var Ca=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),b_=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function Ds(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(N(t,n));if(o)return o}}var y_=(t,e)=>{at("set-up studio"),Et("studio",t),yn("set-up"),b_(()=>Nt(Ds("studio",e)))};async function v_(t){await w_(t),st()||await kr(),y_("days","/days/making/monday")}var s0=["order","run","pour","pipe","studio"];async function Qd(t,{file:e,field:n}){if(t==="order"&&Ca(l.order.open.file,e))return Nt(Ds("order",n));await w_(t,e);let o=s0.find(i=>Ca(Mn(i)?.file??"",e));if(o==="pour"||o==="pipe")Qt(o);else{if(o==="studio")return y_(n.startsWith("/work")&&We()?"money work":"days",n);if(Ds("run",n))return Nt(Ds("run",n));yn("set-up")}b_(()=>Nt(Ds(o??"run",n)))}function La(t){let{days:e,complaint:n,is_old:o}=Oa(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?r0(t,n):u}
    ${e?r`<div class=${o?"old":""}>${a0(t,e)}</div>
            ${$0(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function r0(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${Q(e)}</p>
      <button type="button" @click=${()=>Nd(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!st()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{v_(t)}}>To my making days</button>`:["/work","/work/each_batch"].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Qd(t,{...e,field:"/work/each_batch"})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${vn(n)}${Ge(Q(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Qd(t,e)}}>Go to the field</button>`:u}`}var a0=(t,e)=>r`${g0(e)} ${l0(t,e)} ${f_(e)} ${c0(t,e)} ${h_(e)} ${f0(e)}
  ${h0(e)} ${_0(e)}`,Gd=(t,e,n)=>r`<small>${t?e:n}</small>`;function l0(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${Tt(s)}, promise it for <b>${Tt(o)}</b>.
        ${Gd(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Nt(document.getElementById(N(t,"/due")))}>
        Give it a due day
      </button>`:n?u0(e):d0(e)}function u0({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:a,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${Tt(e)}</b> at the latest to have ${K(a,"piece")} by
      <b>${Tt(s)}</b>.
      ${Gd(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${Tt(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Tt(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function d0({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:a})=>i?r`${i} of ${K(o,"piece")} by ${Tt(s)}, the rest on <b>${Tt(a)}</b>.`:r`none of the ${K(o,"piece")} by ${Tt(s)}, all of them on <b>${Tt(a)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Gd(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var c0=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${Tt(n.day)} <small>${p0(n)}</small></h3>
            <ul>
              ${n.acts.map(m0)}
            </ul>
          </li>`)}
    </ol>
  </details>`,p0=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${qr(e)} of ${qr(t)}`:"",m0=({text:t,min:e,caution:n})=>r`<li>
    ${Ge(t)}${e?r` <small>${qr(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function f0({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:a})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${Tt(i)} at the latest`:`ready by ${Tt(s)}`,a?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function h0({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${K(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function g0(t){let e=g_(t);return e.length?r`<div class="dangers">
    ${e.map(n=>r`<p class="danger"><strong>${ie}</strong> ${Ge(n)}</p>`)}
  </div>`:u}function _0({notes:t}){let e=t.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?r`<p>${Ge(i)}</p>`:r`<p class="minded"><strong>Caution</strong> ${Ge(i)}</p>`;return e.length?r`<h3>To mind</h3>
        ${e.map(n)}`:u}function $0(t,e){let n=c_(t),o=Vn(n.file),i={plan:n,paper:l.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${zt("Calendar file (.ics)",Yt(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${rn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${zt("Table of the days (.csv)",Yt(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${Jn()}</p>
  </section>`}var To=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,As=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function Os(t,e,n,o){let i=`quote ${e}`,s=l.open.has(i),a=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?a:u}
    @click=${()=>qt("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${To(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${a}>${t.map(o)}</td>
        </tr>`:u}`}var Ps=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Wa({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var Ba=(t,{items:e},n)=>Ps(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${a||i}</td>
          </tr>`)),Ea=(t,e)=>Os(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${w0(e(n),n.cash)} ${b0(n.cash)}`),w0=(t,e)=>r`${Ps(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:a})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${a?`, ${a}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,b0=t=>Ps("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function Ms(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var k_=t=>`${R(t,1)} %`;function y0(t){return"margin_percent"in t?`margin ${R(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${R(t.markup_percent,2)} %`:"price as set"}var Yd=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Ia(t,e,{way:n,by:o,ask:i,with_tax:s},a,d=u){let c=i===s,p=To(t),m=w=>Yd(n,w),_=(w,b)=>a?r`${b} ${jn(w)}`:b;return r`<tbody>
    ${As(r`<span class="way">${n}</span>, ${y0(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Zd),"ask")}
    ${e?p("tax in it",m(({tax:w})=>c?w:"none")):u}
    ${p("fees",m(({fees:w})=>w))}
    ${p("left for you",m(({profit:w})=>w))}
    ${p(_("margin","margin, of the price"),m(w=>k_(w.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(w=>k_(w.markup_percent)))}
  </tbody>`}var Zd=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function ja(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return Ms(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Xd=t=>t===1?"once":`${t} times`;function x_({times:t,currency:e,has_tax:n},o){let i=To(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Xd(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${As("It costs",t)} ${t[0].lines.map((s,a)=>v0(t,a))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Ea(t,s=>`made ${Xd(s.times)}`)}
        </tbody>
        ${Ms(t).map((s,a)=>Ia(t,n,s,a===0,T0(t,s.way)))}
      </table>
    </div>`}var tc=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,v0=(t,e)=>Os(t,tc(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${k0(n[e])} ${n[e].parts.map(({part:o})=>x0(n[e],o))}`),k0=t=>Ps(`A piece of ${tc(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Wa(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),x0=(t,e)=>Ba(`${e} of all of them, ${tc(t)}`,t,e),T0=(t,e)=>t[0].lines.map(({run:n},o)=>To(t)(`${n??""}, a piece`,({lines:i})=>Yd(e,Zd)(i[o]))),T_=({times:t})=>ja(t,e=>`the order loses money, made ${e.map(n=>Xd(n.times)).join(", ")}.`);function R_({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(a=>`${i??""}: ${a}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${ie}</strong> ${o}</p>`)}
  </div>`:u}function S_({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${Ce(s.lines.map(a=>o[a].run??""))} from one base,
            "${s.formula}", ${O(E(l.units,s.make_g))} in
            ${K(s.batches.reduce((a,{count:d})=>a+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function R0(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===l.printing.way)?.way}function qa({file:t,question:e,prices:n,is_old:o}){let i=Vn(t),s=R0(n),a={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${lt("The price that is offered",s,d,p=>y(l.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?rn({words:"Offer",kind:"offer",file:`${i} offer`,of:a,is_asleep:o||!s}):u}
      ${rn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${l.files?.studios.length?r`${rn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${zt("Shopping list, table",Yt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${Jn()}</p>
  </section>`}var ec=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await S0(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";pe(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function S0(t){try{return[URL.createObjectURL(await Ee({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof v))throw e;return["",e.message]}}customElements.define("cost-picture",ec);function D_(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],a=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${a(i)} to ${a(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Ft:Sa()}
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
          ${D0(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function D0({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var A_=({sell:t})=>`${t} to sell`;function O_({numbers:t,currency:e,has_tax:n},o){let i=To(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
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
          ${As("A piece costs",t)} ${A0(t).map(s=>O0(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Ea(t,A_)}
        </tbody>
        ${Ms(t).map((s,a)=>Ia(t,n,s,a===0))}
      </table>
    </div>`}var A0=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],O0=(t,e)=>Os(t,e,n=>Wa(n,e),n=>Ba(`${e} of the whole run, ${A_(n)}`,n,e)),P_=({numbers:t})=>ja(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function M_(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${We()?M0():P0()}
  </section>`}var P0=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>nc()}>To the prices paid</button>`;function nc(t,e="lane-studio"){at("set-up studio"),t&&Et("studio",t),yn("set-up"),requestAnimationFrame(()=>G(U(e)))}function M0(){let{quote:t,complaint:e,is_old:n}=Ta();return r`${t?r`${F0(t)} ${P_(t)}`:u}
    <div class="row">${W0(e)}</div>
    ${oc()?u:ic(t?.currency,e)} ${e?L0(e):u}
    ${t?j0(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function F0({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${ie}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var C0=["sell","margin","markup","price"],gi=(t,e)=>t?.file===""&&t.field===e?Q(t):void 0;function L0(t){return C0.some(e=>gi(t,e))?u:r`<p class="alarm" role="status">${vn(t.field)}${Q(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Wd}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${Pd}>Go to the field</button>`:u}
    ${Ad(t)}`}function Ha({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${F(o)}
      @input=${c=>a(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${ht(t,s,i)}
  </div>`}function W0(t){let{numbers:e}=l.quote_wish;return Ha({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:gi(t,"sell"),take:n=>ji({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&ji({numbers:void 0})}})}var B0=()=>st()?nc("money asking",`${N("studio","/asking")}-name`):nc(),oc=()=>Object.keys(g("studio","/asking")??{}).length>0,E0=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],I0={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function ic(t,e){let{by:n,figure:o}=l.quote_wish,{label:i,unit:s}=I0[n??"price"],a=d=>s&&Qe(d)?`${d.trim()} ${s}`:d;return r`${lt("A price, for this moment",n,E0,d=>{ji({by:d,figure:""}),G(U("quote-figure"))})}
    ${n?r`<div class="row">
            ${Ha({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:gi(e,n),take:d=>ji({figure:a(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${B0}>Keep my ways of selling</button>`}function j0(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${t.remarks.map(o=>r`<p class="hint">${o}</p>`)} ${O_(t,e)}
  ${q0(t,e)} ${D_(t,e)}
  ${qa({file:l.run.file,question:Sa(),prices:t.numbers[0].prices,is_old:e})}`}function q0({numbers:t,steps:e,pack_steps:n,pack_steps_untold:o,gaps:i,currency:s},a){let d=c=>c===null?"":`, ${c} ${s} more`;return r`<div class="worth-making ${a?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:c})=>c.map(({text:p})=>r`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>r`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(c=>r`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>r`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>r`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function F_(){let{order:t}=l;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${tn(e)} ${en(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${yt(String(n))}`:u}</p>
    ${s_()} ${fn(e.now)?La("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${fn(e.now)?N0():H0()}
    </section>
    ${fn(e.now)?K0():u}`}var H0=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function N0(){let{quote:t,complaint:e,is_old:n}=i_();return r`${t?r`${R_(t)} ${T_(t)}`:u}
    <div class="row">${U0(e)}</div>
    ${oc()?u:ic(t?.currency,e)} ${e?J0(e):u}
    ${t?r`${V0(t)} ${S_(t)} ${x_(t,n)}
          ${qa({file:Wt().open.file,question:jd(Wt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var U0=t=>Ha({id:"order-times",label:"How often it is made",value:Wt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:gi(t,"times"),take:e=>y(Wt(),{times:e})}),z0=["times","margin","markup","price"];function J0(t){if(z0.some(n=>gi(t,n)))return u;let e=ge("order");return r`<p class="alarm" role="status">
      ${e?r`${vn(t.field)}${Q(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${Id}>Ask again</button>`:e&&Ye()?r`<button type="button" @click=${()=>Nt(Ye())}>Go to the field</button>`:u}`}function V0({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function K0(){let{file:t,now:e}=Wt().open,n={plan:{file:t,order:e},paper:l.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Pa()}
    <div class="choice">
      ${rn({words:"Bench sheets",kind:"sheet",file:`${Vn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${Jn()}</p>
  </section>`}var Q0=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function C_(){let t=[...l.files?.orders??[]].sort(Q0),e=l.new_order.trim(),n=()=>{ut(async()=>{await qf(e),h({new_order:""})})};return r`${$e("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Le(t,G0):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${F(l.new_order)}
            @input=${o=>h({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${we("order")}`}function G0(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":K(e,"piece"),n?`due ${yt(n)}`:"",o?`changed ${yt(o)}`:""].filter(Boolean);return on({kind:ro,one:t,facts:i,open:()=>os(t.file)})}function W_(){if(l.view==="order"&&l.order)return L_(l.order.open);let t=Cn();if(t)return L_(t);let e=Y0();if(e)return e;let{run:n}=l,o=l.formula_of==="apart"||!(J(n)||n.theirs||n.failed);return l.view==="formula"&&o?Z0():n.theirs?ac(n):n.failed?Ua(`Not saved: ${n.failed}`):J(n)?rc:Na(n.shipped?sc:`Saved in ${n.file}`)}function L_(t){return t.theirs?ac(t):t.failed?Ua(`Not saved: ${t.failed}`):J(t)?rc:Na(t.shipped?sc:`Saved in ${t.file}`)}var sc="Built-in: your first change is saved as a copy.",rc={words:"Saving ...",is_kept:!1},Na=t=>({words:t,is_kept:!0}),Ua=t=>({words:t,is_kept:!1,is_failed:!0}),ac=t=>Ua(co(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function Y0(){let t=l.formulas.apart?"apart":"run",e=pn(t);if(e)return ac(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&J(o)))return l.complaint?.file===""?Ua(`Not saved: ${l.complaint.problem}`):rc}function Z0(){let t=l.formulas[l.formula_of];return Na(t?t.shipped?sc:`Saved in ${t.file}`:"")}function Ja(){let{view:t,mould:e,order:n,past:o,future:i}=l;if(t==="moulds"&&e)return za(e,Bf,Ef);let s=ce(t)?Cn():void 0;return s?za({past:B_(s,o),future:B_(s,i)},Ji,eu):ce(t)?{undo:Ki()&&Ju,redo:au()&&Bh}:t==="order"&&n?za(n,Hf,Nf):za({past:o,future:i},Ji,eu)}function B_(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var za=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var E_={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},X0={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},tR="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",eR="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",lc=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${t} />`}</svg>`;function q_(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${up.map(e=>H_(e,E_[e],r`${E_[e]}`))}
              </nav>
              ${oR()}`}
    </div>
    ${t?u:iR()}
  </header>`}var nR={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},Va=["metric","both","us"],I_={metric:"g",both:"both",us:"oz"},j_=t=>()=>{h({units:t}),localStorage.setItem("units",t)};function oR(){let t=Va[(Va.indexOf(l.units)+1)%Va.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${Va.map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${j_(e)}>
            ${nR[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${j_(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${I_[l.units]}<span
        class="unseen"
        >. Change to ${I_[t]}</span
      >
    </button>`}function iR(){let{undo:t,redo:e}=Ja();return r`<div class="bar">
    ${l.run.file?sR():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${lc(tR)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${lc(eR)}<span>Redo</span></button>
    </div>
    ${l.run.file||l.view==="order"?uR():u}
  </div>`}function sR(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${dp.map(rR)}</div>
  </nav>`}function rR(t){let[e,n]=X0[t],o=aR(t);return H_(t,o?`${e}, ${o.words}`:e,r`${lc(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function aR(t){if(t==="watch"&&Vf())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&lR())return{sign:"\u25CB",words:"missing"}}var lR=()=>l.complaint!==void 0&&!l.complaint.is_fault;function H_(t,e,n){let o=l.view===t||l.view==="order"&&t==="orders";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{yn(t)}}
  >
    ${n}
  </button>`}function uR(){let{words:t,is_kept:e,is_failed:n}=W_();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var N_=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${f({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${f({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${La("run")}`;function z_(t){if(!Ah(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=It(e)?`${K(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${U_(t,"pour","The base, whole run")}
      ${e.pipe?U_(t,"pipe","The topping, whole run"):u} ${dR(t)}
    </div>
  </section>`}function U_(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...Vh(i),...na(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:d})=>Ka(`${e}.ingredients.${d}.g`,a.name,ko(l.units,a)))}
    ${Ka(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",E(l.units,i.make_g))}
  </div>`}var Ka=(t,e,n)=>M({key:`needs.${t}`,label:e,shown:n,of:t});function dR(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((d,c)=>({layer:s,one:d,i:a,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>Z(l.units,ft(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:d,j:c})=>Ka(`pour.layers.${d}.colours.${c}.g`,`${a.name}, for ${s.name}`,ko(l.units,a)))}
    ${o.map((s,a)=>Ka(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function J_(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${M({key:"piece.fresh",label:c("Fresh"),shown:E(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:M({key:"piece.cured",label:c("Cured"),shown:E(l.units,o),of:"piece.cured_g"})}
      ${s?M({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:E(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:M({key:"piece.label",label:"Net weight for the label",shown:E(l.units,i,0),of:"piece.label_g"})}
      ${a?M({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${M({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${uc(t)}
    </section>
    ${M_()} ${z_(ai(t))}`}function uc(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[K_,cc]=[440,270],[Fs,dc,Qa,_i]=[64,K_-10,10,cc-52],cR=6,pR=8;function V_(t){let e=t/cR,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var $i=t=>R(t,1);function Q_(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>$i(Fs+(dc-Fs)*d/n),s=d=>$i(_i-(_i-Qa)*d/o),a=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${K_} ${cc}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${V_(n).map(d=>S`<path class="grid" d="M${i(d)} ${Qa}V${_i}" />
            <text x=${i(d)} y=${_i+20} text-anchor="middle">${$i(d)}</text>`)}
      ${V_(o).map(d=>S`<path class="grid" d="M${Fs} ${s(d)}H${dc}" />
            <text x=${Fs-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${$i(d)}</text>`)}
      ${S`<text x=${(Fs+dc)/2} y=${cc-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Qa+_i)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${Qa}V${_i}" />`}
    </svg>
    ${mR(t)}`}function mR(t){let e=Math.max(1,Math.round(t.length/pR)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
              <th scope="row">${$i(o)}</th>
              <td>${$i(i)}</td>
              <td>${R(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ga=Math.PI/8,fR=500,pc=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},fR))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await Ee(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Go(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof v))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;pe(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Ga)}>Turn left</button>
        <button type="button" @click=${e(Ga)}>Turn right</button>
        <button type="button" @click=${n(Ga)}>From above</button>
        <button type="button" @click=${n(-Ga)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",pc);function G_(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${M({key:"mould.brimful",label:"To the brim",note:`${O(St(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:At(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Q_(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${hR(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function hR(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var gR=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function Y_(t){let{batch:e}=l.printing;return It(t)&&e<=t.pieces.batches?e:0}function _R(t){if(!It(t))return u;let e=Y_(t),n=i=>xo({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${F(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${gR(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${nn(t,s)}`))}
      </select>
    </div>
  </div>`}function Z_(t){let{paper:e}=l.printing,n=Vn(l.run.file),o={file:l.run.file,run:l.run.now},i=l.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},a=Y_(t),d={plan:o,paper:e,...a?{batch:String(a)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Pa()} ${_R(t)}
    <div class="choice">
      ${rn({words:"Bench sheet",kind:"sheet",file:`${n}${a?` batch ${a}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?zt("Label draft",Yt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${zt("Drawing of the pour, true size",Yt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${zt("Drawing of the piece",Yt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${zt("Whole piece, GLB (3D viewer)",Yt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${zt("Whole piece, STL (3D printing)",Yt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${zt("Filled cavity, GLB (3D viewer)",Yt(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${zt("Cavity, STL (3D printing)",Yt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${Jn()||`The drawing has the pour line ${O(St(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var X_=t=>Z_(t);var Dt={at:"/decorations"},wi=t=>`${Dt.at}/${t}`,Kn=t=>D("run",`${wi(t)}/name`).trim()||`Decoration ${t+1}`,Zt=()=>$(l.run.now,"/cut")!==void 0,Ro=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Cs=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var de="/batch",t$=t=>`${t}/moulds_owned`;function mc(){return P({name:"batches",pointers:[de],summary:`Batches${$R()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${C("run",de)}
        <div class="row">${wR()} ${yR()}</div>
        ${T({question:"Cavities at each filling",at:de,asked_at:`${de}/fill`,chosen:g("run",`${de}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>e$("fill",t==="full"?t:void 0)})}`})}function $R(){let[t,e]=[`${de}/pieces`,`${de}/casts`].map(o=>D("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function e$(t,e){let n=mt("run",de,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function wR(){let t=g("run",`${de}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${de}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Zt()?g("run",`${de}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${bR}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function bR(){B("run","Counted in loaves",de,e$("pieces",void 0))}function yR(){let t=`${de}/whippings`;return!ae()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var vR={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},be={at:"/dust"},Ya=t=>D("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function n$(){at("set-up dust"),j(be,{name:""},"Dust")}function kR(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function o$(t){let e=`/dust/${t}`,n=kR(e),o=Ya(t),i=s=>({...mt("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...vR[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${T({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Hn("run",e,o)}`}var xR={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function TR(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function i$(t,e){let n=TR(t),o=i=>({...mt("run",t,["on_top","buried"]),...xR[i]});return Ro(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:Ro(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${T({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?RR(`${t}/on_top`):n==="buried"?DR(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function RR(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${s$(t,"It is turned")}`}function s$(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var SR=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function DR(t,e){let n=`${t}/buried`,o=e===x(Dt).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${C("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:SR,puts:a=>OR(t,a)})}
  ${i==="said"?MR(t,e):u}`}var AR=()=>r`<svg
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
  </svg>`,r$={x:"",y:"",height:""};function OR(t,e){let n=mt("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Cs(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>r$);return{...mt("run",t,["per_piece","per_cast"]),[a$(t)]:i.length,buried:{...n,places:i}}}var a$=t=>Zt()?"per_cast":Cs(t)??"per_piece";function PR(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>A(s,`${t}/${a}`,void 0),n);return A(i,`${t}/${a$(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function MR(t,e){let n=PR(t),o=x(n);return r`${AR()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${a}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${W(n,s)} role="group" aria-label="Place ${s+1} of ${Kn(e)}">
        ${C("run",a)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${H(n,s,`place ${s+1} of ${Kn(e)}`)}
        </div>
        ${s$(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${Y(n,"Add a place",()=>j(n,r$,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var u$=t=>`${t} made`;function FR(){let t=wi(x(Dt).length),e=Zt()?{}:{per_piece:""};at("set-up decorate");for(let n of[u$(t),`${t} where`])Et("run",n);j(Dt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function d$(){let[t,e]=[x(Dt).length>0,x(be).length>0];return r`${Y(Dt,t?"Add another decoration":"Add a decoration",FR)}
  ${Y(be,e?"Add another dust":"Add a dust",n$)}`}function c$(t){let e=wi(t);return r` ${C("run",e)} ${ER(e)}
    <div class="row">
      ${LR(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${Ro(e)==="bought"?u:CR(e)}
    </div>
    ${i$(e,t)} ${Hn("run",e,Kn(t))}`}var CR=t=>r`${f({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${f({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${f({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function LR(t){let e=Cs(t),n=tt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Zt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Zt()?"In each loaf":"In each cast":Zt()?"On each bar":"On each piece",i=s=>({...mt("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Zt()?T({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var WR={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},l$={density:"",melt_loss:"",left_in_jug:""};function BR(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(l$),"time_per_tray_fill"]:[]],o=Ro(t)==="bought"&&e!=="bought"?l$:{};return{...mt("run",t,n),...o,...WR[e]}}function ER(t){let e=Ro(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:u$(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>BR(t,o)})}
        ${e?IR[e](t):u}
        ${e==="bought"?u:f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var IR={mould:jR,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>f({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function jR(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${ii("Cast in",`${t}/mould`,l.files?.moulds)}
  ${T({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function p$(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!ae()?u:r`<div class="labelled">
      ${Ou(t,"Make one pot of lye solution for both",e,{})}${_n("lye_solution")}
    </div>
    ${Oe("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function m$(t){let e={at:"/bottles"},n=x(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&gt(t)?` Weights are of ${gt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${W(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${H(e,i,a)}
            </div>
            ${C("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?qR(t,i,a):u}
          </div>`})}
        ${Y(e,"Use up a bottle",()=>j(e,{name:"",holds:""},"bottle"))}`})}function qR(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>M({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:Z(l.units,ft(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Ls="/label",hc=()=>g("run",Ls)!==void 0;function f$(){let e=g("studio",bi.studio)!==void 0?{weight_spread:""}:{market:""};at("set-up label"),B("run","Label added",Ls,e,U("lane-label"))}function h$(){return r`${C("run",Ls)} ${HR()}
    <button type="button" @click=${()=>B("run","Label removed",Ls,void 0)}>Remove the label</button>`}var bi={run:"/label/market",studio:"/label/market"};function gc(){let{of:t,at:e}=us(bi);return r`${T({of:t,question:"Where it is sold",at:t==="run"?Ls:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?NR(n):n})}
  ${qn("Where it is sold",[bi])}`}function HR(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${gc()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:UR})}
  ${t==="weighed"?zR():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${Ze(bi)==="EU"||g("run",fc)!==void 0?Ou(fc,"With the e mark",g("run",fc)===!0,!0):u}`}var fc="/label/e_mark";function NR(t){return{...mt("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function UR(t){let e=mt("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function zR(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${H(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more piece",()=>j(t,"","piece"))}`}function g$(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${Hu(t)?`${c.count} of `:""}${nn(t,c)}`),a=`Made in ${e} batches${Hu(t)?": ":" of "}${Ce(s)}; ${Gr(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${It(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${K(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var _$=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function $$(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?v$(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?JR(t,e,n,a):0;return{brim:n,line:o,topping:d,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+d+a)}}function JR(t,e,n,o){let i=Ae($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,d]=du(e,e.brim-.01),c=Math.PI/4*(d-a)**2;return 1500*t.pipe.visible_each_ml/c}function _c(t,e){let[n,o]=du(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,w)=>{let b=i+w*(Math.max(a(m),a(_))+(o-n)*.035);return`C${b} ${d(m)} ${b} ${d(_)} ${i+w*a(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+a(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Ws=(t,e)=>t===e?`shaded ${e}`:"plain";function Qn(t,e,n=u){return r`${w$(t,e,n)}
  ${t==="decorate"&&$c(e)?r`<p class="hint">${$c(e)}</p>`:u}`}var Gn=(t,e)=>r`<div class="small-view">${w$(t,e,u)}</div>`;function w$(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=$$(e,o),s=o.right-o.left,a=Math.max(6,s*.1),d={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${nS(t,e)}>
      ${VR(t)} ${KR(t,e,o,i)} ${GR(t,e,o,i)} ${YR()}
      ${ZR(t,e,o,i)} ${eS(t,e,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function b$(t,e){let n=l.measured.outline,o=$$(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function VR(t){return S`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${_$(y$())} /></clipPath>
  </defs>`}function y$(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function KR(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(d=>QR(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${t})">${a.map((d,c)=>S`<path class="whole" d=${d} /><path class="${Ws(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function QR(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function GR(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${t})"><rect class=${Ws(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function YR(){return S`<path class="wall" fill-rule="evenodd" d=${_$(y$())} />`}function ZR(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${e.pipe?S`<path class=${Ws(t,"pipe")} d=${_c(n,o)} />${t==="pipe"?S`<path fill="url(#dots-pipe)" d=${_c(n,o)} />`:u}`:u}
    ${t==="dust"?XR(e,n,o):u}
    ${o.ball?S`<circle class=${Ws(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:d,one:c,i:p})=>tS(Ws(t,"decorate"),i,d,c,p))}`}function XR(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return S`<path class="powder" d=${t.pipe?_c(e,n):o} />`}function tS(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],d=Ae($(l.run.now,`/decorations/${i}/rod/diameter`)),c=Ae($(l.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${t} cx=${s} cy=${-a} r=${v$(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),w=d/2*Math.sqrt(1-_*_),b=c*_+2*w,k=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${t} x=${-b/2} y=${-d/2} width=${b} height=${d} rx=${w} ry=${w?d/2:0}
    transform="translate(${s} ${-a}) rotate(${k})" />`}var v$=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function $c(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function eS(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return S`${Array.from({length:i-1},(s,a)=>{let d=n.left+(n.right-n.left)*(a+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function nS(t,e){let n=O(St(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${$c(e)}`.trim()}var oS=t=>`set-up ${t}`;function Xt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=oS(t),d=()=>he({part:e,fold:a},s);if($n())return r`${d()}`;i.some(([m,_])=>Bt(m,_))&&at(a);let c=l.open.has(a),p=oi().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
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
        @click=${()=>qt("open",a)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var $t=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var k$=()=>x(Dt).length>0,x$=()=>x(be).length>0;function T$(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function R$(t){let e=t?x(Dt).flatMap((n,o)=>A$(t,o)??[]):[];return Xt({name:"decorate",title:"Decorate",drawing:t&&(()=>Gn("decorate",t)),result:e.length?e.map(n=>rS(t,n)):$t(S$(Dt,Kn)),about:[["run",Dt.at]],form:()=>r`${t?r`<div class="side">${Qn("decorate",t)}</div>`:u}
        <div class="weights">${t?x(Dt).map((n,o)=>iS(t,o)):u}</div>
        ${O$(Dt,Kn,c$)}`})}var S$=(t,e)=>`${x(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function iS(t,e){let n=A$(t,e);return n?aS(t,n,e):u}function D$(t){let e=t?.dust?.length?x(be).map((n,o)=>uS(t,o)):void 0;return Xt({name:"dust",title:"Dust",drawing:t&&(()=>Gn("dust",t)),result:e??$t(S$(be,Ya)),about:[["run",be.at]],form:()=>r`<div class="side">${t?Qn("dust",t):u}</div>
        <div class="weights">${t?x(be).map((n,o)=>dS(t,o)):u}</div>
        ${O$(be,Ya,o$)}`})}var A$=(t,e)=>T$(t.decorations,x(Dt),D("run",`/decorations/${e}/name`),e);function O$(t,e,n){return r`<div class="all-questions">
    ${x(t).map((o,i)=>r`<section class="questions" id=${W(t,i)} aria-labelledby="${W(t,i)}-title">
          <div class="part-head">
            <h3 id="${W(t,i)}-title">${e(i)}</h3>
            ${H(t,i,e(i))}
          </div>
          ${he({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function sS(t,e){return r`<h3>${t.name}</h3>
    ${M({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function rS(t,e){if(e.bought)return $t(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=O(Z(l.units,ft(e,"make_")));return $t(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${It(t.whole)?", for the whole run":""}.`)}function aS(t,e,n){return e.bought?sS(e,n):r`<h3>${e.name} ${It(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${M({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:Z(l.units,ft(e,"make_")),of:`decorations.${n}.make_g`})}
    ${M({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(e.volume_each_ml,2)} ml`,shown:E(l.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${In(e.casting_s)} of casting.</p>`:u} ${lS(e,n)}`}function lS(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":O(St(l.units,a)),s=a=>{let d=(o?.embeds??[]).map(a).filter(c=>c!==null);return d.length?O(St(l.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
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
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${$o(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function uS(t,e){let n=P$(t,e);if(!n)return u;let o=gt(t);return $t(r`<b>${O(Z(l.units,ft(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var P$=(t,e)=>T$(t.dust,x(be),D("run",`/dust/${e}/name`),e);function dS(t,e){let n=P$(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=M({key:`set-up.dust.${e}`,label:n.name,note:gt(t),shown:Z(l.units,ft(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function M$(t){let e=t?.cut;return Xt({name:"cut",title:"Cut",drawing:t&&(()=>Gn("cut",t)),result:e?cS(t,e):$t("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?pS(t,e):u}
        <div class="all-questions">${_g()}</div>`})}var cS=(t,e)=>$t(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${O(E(l.units,t.piece.fresh_g))} on average, fresh.`);function pS(t,e){return r`<div class="side">${Qn("cut",t)}</div>
    <div class="weights">
      ${M({key:"cut.bar",label:"A bar on average, fresh",note:mS(e),shown:E(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${M({key:"cut.offcuts",label:"Offcuts",shown:E(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${fS(e)}
    </div>`}function mS(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function fS(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function F$(t){return Xt({name:"label",title:"Label",drawing:gS,result:$t(hS(t)),about:[["run","/label"]],form:()=>r`<div class="more">${h$()} ${t?uc(t):u}</div>`})}function hS(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${O(E(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var gS=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var ye=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],et=t=>l.fats.find(e=>e.id===t)?.name??t,wc=8;function So({key:t,label:e,offers:n,among:o,taken:i,take:s}){let a=`find-${t}`,d=l.finding?.key===t?l.finding.text:"",c=(d.trim()?_S(d,o):n).filter(b=>!i(b)),p=b=>{h({finding:void 0}),s(b)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(b=>Ht(et(b))===Ht(m)),w=()=>{if(!m)return;let b=c.find(z=>Ht(et(z))===Ht(m)||Ht(z)===Ht(m)),k=c.length===1?c[0]:void 0;(b??k??_)&&p(b??k??m)};return r`<div class="picker" role="group" aria-labelledby="${a}-label">
    <p class="question" id="${a}-label">${e}</p>
    <div class="field">
      <label for=${a}>Find it by its name</label>
      <input
        id=${a}
        .value=${d}
        @input=${b=>h({finding:{key:t,text:b.target.value}})}
        @keydown=${b=>{b.key==="Enter"&&w()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,wc).map(b=>r`<button type="button" @click=${()=>p(b)}>${et(b)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>wc?r`<p class="hint">${c.length-wc} more: type a part of the name.</p>`:u}
  </div>`}function _S(t,e){let n=e?[]:ye(),o=Ht(t).split(/\s+/).filter(Boolean),i=l.fats.filter(a=>gn(a,t)!==void 0).map(({id:a})=>a),s=a=>o.every(d=>Ht(et(a)).includes(d));return[...new Set([...n.filter(a=>s(a)||i.includes(a)),...i])]}var kn=t=>f({...t,of:"studio"});function C$(){let t=(e,n,o)=>P({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${ct("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",yS)} ${t("/blends","Melted blends of fats",xS)}
    </div>
  </section>`}var $S=["/prices","/packs","/have","/waste"],wS=t=>(e,n)=>$S.reduce((o,i)=>$(o,`${i}/${L(t)}`)===void 0?o:ps(o,i,t,n),e);function bS(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,a)=>{let d=$(s,a);return d===void 0?s:A(s,a,n(d))},i)}function L$({at:t,name:e,label:n,body:o}){let i=(a,d)=>Se([["studio",a],["run",bS(e,d)]]),s=`${t}/${L(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${bo("studio",t,e)}
    </div>
    ${C("studio",s)}
    <div class="row">${cs({of:"studio",at:t,name:e,label:n,also:wS(e),put:i})}</div>
    ${o}
    <div class="row">
      ${kn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${kn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${kn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var yi="/lye_solutions",yS=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${ct("studio",yi).map(t=>L$({at:yi,name:t,label:"What you call it",body:vS(t)}))}
    ${ri({of:"studio",at:yi,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>X("studio",`${yi}/${L(t)}/alkali`)})}`;function vS(t){let e=`${yi}/${L(t)}`,n=D("studio",`${e}/alkali`),o=n||"alkali",i=D("studio",`${e}/strength`);return r`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${kn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${kn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${kS(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${kn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${kn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${C("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Ut({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${kn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function kS(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Bs="/blends",xS=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${ct("studio",Bs).map(t=>L$({at:Bs,name:t,label:"What you call it",body:TS(t)}))}
    ${ri({of:"studio",at:Bs,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>U(`find-blend ${t}`)})}`;function TS(t){let e={of:"studio",at:`${Bs}/${L(t)}/fats`,stays:!0},n=x(e),o=i=>n.some(s=>s.fat===i);return r`${C("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${W(e,s)}>
        ${kn({label:et(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${H(e,s,et(String(i.fat)))} ${C("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${ui("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${So({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:RS(),among:"fats",taken:o,take:i=>j(e,{fat:i,share:""},et(i))})}`}var RS=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=l.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],W$=t=>x({of:"studio",at:`${Bs}/${L(t)}/fats`}).map(({fat:e})=>String(e)),vi=t=>{let e=g("studio",`${yi}/${L(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Es=t=>`/${t}/lye_from`,Is=t=>`/${t}/blend`;function js(t){let e=ct("studio","/lye_solutions").length>0||g("run",Es(t))!==void 0,n=ct("studio","/blends").length>0||g("run",Is(t))!==void 0;if(!e&&!n)return u;let o=[...B$(t),E$(t)].filter(Boolean).join(", ");return P({name:`/${t} ready`,pointers:[Es(t),Is(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?DS(t):u} ${n?OS(t):u}`})}function B$(t){let e=g("run",Es(t));return typeof e=="string"?[e]:tt("run",Es(t)).map(String)}var SS=t=>tt(t,"/alkali").map(e=>String($(e,"/alkali")));function DS(t){let e=Es(t),n=N("run",e),o=B$(t),i=SS(t),s=[...new Set([...ct("studio","/lye_solutions"),...o])],a=s.filter(m=>o.includes(m)||i.includes(vi(m).alkali)),d=s.filter(m=>!a.includes(m)),c=vt("run",e),p=m=>{let{alkali:_}=vi(m),w=o.includes(m),b=o.filter(Pt=>Pt!==m&&(w||vi(Pt).alkali!==_)),k=w?b:[...b,m],z=k.length>1?k:k[0];B("run",`${m}: ${w?"no":"yes"}`,e,z)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ce(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${a.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${vi(m).words}
          </button>`)}
    </div>
    ${ht(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>vi(m).words).join(", ")}.</p>`:u}
  </div>`}var E$=t=>{let e=g("run",Is(t));return typeof e=="string"?e:D("run",`${Is(t)}/name`)};function AS(t,e){let n=tt(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let a=l.fats.find(({id:d})=>d===s);return a?[a.id,a.name,a.inci,...a.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return W$(e).every(s=>i.has(s.toLowerCase()))}var bc="\0singly";function OS(t){let e=Is(t),n=E$(t),o=[...new Set([...ct("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||AS(t,d)),s=o.filter(d=>!i.includes(d)),a=g("run",`${e}/share`)!==void 0;return r`${T({question:"Blend of fats that is weighed",at:e,chosen:n||bc,answers:[[bc,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===bc?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?a?r`<div class="row">
            ${f({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>B("run","Its share",e,{name:n,share:""},X("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var Zn="/pour/layers",Yn={at:Zn,in_order:!0},yc=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Xa=()=>x(Yn);function PS(){let t=e=>Xa().some(n=>e in n);return yc.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function j$(t){let e=Xa(),n=PS();return e.length?r`<h3>
      Layers, lowest first ${t&&gt(t)?r`<small>${gt(t)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:Zn,is_told_elsewhere:!0,chosen:n,answers:yc,puts:o=>FS(o,t)})}
    <div class="items">${e.map((o,i)=>CS(o,i,n,t))}</div>
    ${Y(Yn,"One more layer on top",()=>j(Yn,{name:MS(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Y(Yn,"Pour it in layers",()=>j(Yn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function MS(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function q$(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function FS(t,e){let n=Xa(),o=l.is_old?void 0:e,i=(s,a)=>{let d=q$(o,s,a);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((s,a)=>{let d=Za(a),c=t!=="parts"&&n.length>1&&a===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,a)}}})}var Za=t=>mt("run",`${Zn}/${t}`,[...yc.map(([e])=>e),"rest"]);function CS(t,e,n,o){let i=`${Zn}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=q$(o,t,e);return r`<div class="part" id=${W(Yn,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?LS(o,a,e):r`<p class="part-title">${s}</p>`} ${C("run",i)}
    ${BS(t,e,n,s)}
    ${o&&a?a.colours.map((d,c)=>WS(o,d,e,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${qS(i,s)} ${HS(i,e)}
        ${H(Yn,e,s)}`})}
  </div>`}function LS(t,e,n){return M({key:`pour.layer.${n}`,label:e.name,note:`${ku(St(l.units,e.to_mm-e.from_mm))} thick, ${ku(E(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?E(l.units,e.g):Z(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function WS(t,e,n,o){return M({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${R(e.teaspoons,1)} tsp`:"",shown:ko(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function BS(t,e,n,o){if(n==="parts")return ES(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${Zn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?jS(e,n):IS(e,n)}
    >
      Takes the rest
    </button>`}function ES(t,e,n){let o=`${Zn}/${e}/parts`,i=s=>()=>{h({typed:void 0}),V("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function IS(t,e){let n=Xa().map((o,i)=>i===t?{...Za(i),rest:!0}:o.rest?{...Za(i),[e]:""}:o);B("run","takes the rest",Zn,n)}function jS(t,e){let n=`${Zn}/${t}`;B("run","amount of the layer",n,{...Za(t),[e]:""},X("run",`${n}/${e}`))}function qS(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${x(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${W(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${H(n,i,a)}
      </div>
      ${C("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Hn("run",s,a)}
    </div>`})}
  ${Y(n,"Add a colour",()=>j(n,{name:"",rate:""},"colour"))}`}var I$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function HS(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===x(Yn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Ut({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:I$,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!I$.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Be=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function vc(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Be()==="depth"?n-o:o;h({typed:void 0}),V("run",`/pour/line/${Be()}`,`${R(i,2)} mm`)}function H$(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Ae($(l.run.now,`/pour/line/${Be()}`));return n===void 0?t.pour.below_brim_mm:Be()==="depth"?e-n:n}function NS(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function US(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=H$(t),{share:o,h:i}=b$(t,e-n),s=c=>NS(c,p=>vc(t,n+p*i)),a=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),vc(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${O(St(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function zS(t){let{pour:e}=t,n=O(St(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=gt(t);return $t(r`${o}, <b>${O(E(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${O(E(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var N$=()=>Be()==="depth"?"Depth":"Below brim";function U$(t){return Xt({name:"pour",title:"Pour",drawing:t&&(()=>Gn("pour",t)),result:t?zS(t):$t(`${JS()}.`),about:[["run","/pour"]],form:()=>r`${t?VS(t):KS()}
        <div class="more">
          ${tl("pour")} ${js("pour")} ${j$(t)} ${ua("pour")}
        </div>`})}function JS(){let t=D("run",`/pour/line/${Be()}`);return t?`${t} ${Be()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function VS(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>vc(t,H$(t)+i);return r`<div class="side">
      ${Qn("pour",t,US(t))} ${z$(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:N$(),at:`/pour/line/${Be()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${M({key:"pour.each",label:"Weigh into each",shown:E(l.units,e.mass_each_g),note:`${R(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${M({key:"pour.mm",label:"1 mm more or less",shown:At(l.units,e.ml_per_mm,2),note:`${Ve(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${M({key:"set-up.pour.make",label:"Base to make",note:gt(t),shown:E(l.units,e.make_g),of:`${n}.make_g`})}
      ${M({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var KS=()=>r`<div class="side">
    ${z$()} ${C("run","/pour/line")}
    ${f({label:N$(),at:`/pour/line/${Be()}`,unit:"mm"})}
  </div>`,tl=t=>r`<button type="button" @click=${()=>Qt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function z$(t){let e=n=>{if(n===Be())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;B("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return lt("The pour line is measured",Be(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var QS=[0,50,80,100];function J$(t){let e=t?.pipe;return Xt({name:"pipe",title:"Pipe",drawing:e&&(()=>Gn("pipe",t)),result:e?GS(t,e):$t("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?YS(t,e):ZS()})}function GS(t,e){let n=gt(t);return $t(r`Pipe <b>${R(e.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,e.mass_each_g))} at this
      whipped density; make <b>${O(E(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function YS(t,e){return r`<div class="side">
      ${Qn("pipe",t)}
      ${M({key:"pipe.each",label:"Topping on each",shown:At(l.units,e.volume_each_ml),note:`${R(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${M({key:"set-up.pipe.make",label:"Topping to make",note:gt(t),shown:E(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${M({key:"pipe.density",label:"Whipped density",note:`overrun ${R(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${tl("pipe")} ${js("pipe")}
    </div>
    <div class="weights">${cd(e)} ${G$()} ${XS(t)} ${s1(t)}</div>
    <div class="more">${dd(e)} ${ud()}</div>`}var qs=t=>t===0?"pipe":`pipe.whipping${t}`,Hs=(t,e)=>`${t.place}.pipe.whippings.${e}`;function V$(t,e){let n=Qr(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function ZS(){return r`<div class="more">${dd()}</div>
    <div class="side">${G$()} ${g("run","/pipe/whip_now")===void 0?u:Q$()}</div>
    <div class="weights">${cd()} ${tl("pipe")} ${js("pipe")}</div>
    <div class="more">${ud()}</div>`}var K$=t=>gt(t)?r`<small>${gt(t)}</small>`:u;function XS(t){return r`<h3>Today's bowl ${K$(t)}</h3>
    ${Q$()} ${t.whippings.map((e,n)=>t1(t,e,n))}`}function t1(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${V$(t,e)}
  ${o==null?u:M({key:`${qs(n)}.now`,label:"Enough for",note:s,shown:[K(o,"piece"),""],size:"weigh",of:`${Hs(t,n)}.pieces_now`})}
  ${n1(t,e,n)}`}function Q$(){let t=g("run","/pipe/whip/holds"),e=t===void 0?$s():{holds:t,net:""};return Ut({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:e1})}function e1(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${ws("/pipe/whip_now")}
  </div>`}function n1(t,e,n){return e.readings?.length?P({name:`${qs(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>o1(t,e,n)}):u}function o1(t,e,n){return r`<table class="readings">
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
    ${$o(`${qs(n)}.readings`,"Show the calculation",`${Hs(t,n)}.readings`)}`}function G$(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",t))?.[1]?.replace(",",".")),n=Bt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${jn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${QS.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>V("run",t,`${o} %`)}
          >
            ${i1(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function i1(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function s1(t){let e=t.whippings.map(i=>({one:i,words:r1(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${K$(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${V$(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${$o("pipe.limits","How the limits come about",`${Hs(t,0)}.limits`)}`}function r1({piping_s:t,lye_spoonfuls:e}){return[t?`${In(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${In(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Z$(t){return Xt({name:"lye",title:"Lye",drawing:l1,result:t?Y$(t).map(a1):$t("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${Y$(t).map(u1)} ${c1(t)}</div>`:u}
        <div class="more">${p$()} ${m$(t)}</div>`})}function Y$(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=Qr(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:Hs(t,s),pieces:e,key:qs(s)}});return[n,...o]}function a1({title:t,batter:e,slot:n,pieces:o}){let i=Bn(n,o).length?" \u26A0":"";return $t(r`${t}: ${R(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Gt(e.superfat_percent.effective)}${i}</b>.`)}var l1=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function u1({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,d=Bn(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${M({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${M({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Gt(a)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${is(t,c,i)} ${X$(n.superfat_percent)} ${d1(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function X$(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${Gt(e)} and ${Gt(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Gt(o)} and ${Gt(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return vu(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${d} Some fat is left over even at the lowest.${p}</p>`}function d1(t,e,n){return t.heat?r`${tw(t.heat)} ${$o(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function tw(t){let e=i=>O(sh(l.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?In(i.shortest_min*60):"at once"} to ${In(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function c1(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,d,c="")=>M({key:`pot.${i}`,label:s,note:c,shown:a,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(e.strength_percent,1)} %${gt(t)&&`; ${gt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",Z(n,ft(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,Z(n,ft(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",Z(n,ft(e,"lye_")),"lye_g",p1(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,Z(n,ft(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Gt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,Z(n,ft(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${is(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?X$(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${O(Z(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?tw(e.heat):u}
  </div>`}function p1(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=ft(t,"lye_"),i=Z(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${O(i)} with the pot: make up with water to that after cooling`}var Ns=new Map,m1=()=>Ns.clear(),f1=t=>typeof t?.owned=="number"?t.owned:void 0;function kc(t){let e=Kt(t,l.files?.moulds);return Ns.has(e)||(Ns.set(e,void 0),h1(e)),Ns.get(e)}async function h1(t){try{Ns.set(t,f1(wt((await Mt(t)).text))),ot()}catch(e){if(!(e instanceof v))throw e}}async function ew(t,e){let n=kc(t);n!==void 0&&(V("studio",e,n),q(`${n} kept in the studio`),await g1(Kt(t,l.files?.moulds)),dt())}async function g1(t){let e=await Lt(Vt,t);e.shipped||e.theirs||(Rt(e,A(e.now,"/owned",void 0)),await He(e),m1())}function el(t=!1){let e=(n,o,i,s=!1)=>f({of:"studio",label:o,at:`/work/${n}`,unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var nl=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],ol=t=>t[0].toUpperCase()+t.slice(1),il=t=>f({...t,of:"studio"});function nw(){return!$n()&&l.run.file&&l.open.has("folded studio days")&&Oa("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${P({of:"studio",name:"days",pointers:["/days",...We()?[]:["/work"]],summary:r`<span>When you work${r`<small>${_1()}</small>`}</span>`,body:$1})}
  </section>`}function _1(){let t=g("studio","/days/making")??{};return nl.filter(e=>t[e]).map(e=>`${ol(e)} ${String(t[e])}`).join(", ")}var $1=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${nl.map(t=>il({label:ol(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${C("studio","/days")} ${C("studio","/days/making")} ${w1()} ${b1()} ${v1()}
    ${We()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${el(g("studio","/days")!==void 0)}</div>
            ${C("studio","/work")}`}`;function w1(){let t="/days/small_jobs",e=N("studio",t),n=tt("studio",t),o=a=>{let d=nl.filter(p=>p===a!==n.includes(p)),c=p=>wn(A(p,t,d.length?[...d]:void 0),"/days");re("studio",`${ol(a)}: ${n.includes(a)?"no":"yes"}`,c)},i=Bt("studio",t),s=nl.filter(a=>n.includes(a)||!D("studio",`/days/making/${a}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(a=>r`<button type="button" aria-pressed=${n.includes(a)?"true":"false"} @click=${()=>o(a)}>
            ${ol(a)}
          </button>`)}
    </div>
    ${ht(e,i,"Without any, these wait for a making day.")}
  </div>`}var Us={of:"studio",at:"/days/off",and:t=>wn(t,"/days")};function b1(){return r`<p class="question">Days off and holidays</p>
    ${x(Us).map((t,e)=>y1(String(t),e))}
    ${Y(Us,"Add a day off",()=>j(Us,"","A day off"))}`}function y1(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=N("studio",n),a=vt("studio",n),d=(m,_)=>V("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,w,b)=>r`<div class="field short ${a?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${F(w)}
        @input=${k=>b(k.target.value)}
        @blur=${rs}
        aria-invalid=${a?"true":"false"}
        aria-describedby=${a?`${s}-said`:u}
      />
      ${m===s?ht(s,a):u}
    </div>`,p=o?`off on ${yt(o)}`:`day off ${e+1}`;return r`<div class="row" id=${W(Us,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${H(Us,e,p)}
  </div>`}function v1(){let t=(e,n,o)=>il({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${il({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${k1()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var k1=()=>Ut({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>il({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return r`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var x1={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},ow=t=>({run:t,studio:t}),xc=t=>ow(`/losses/${t}`);function Tc(t,e){return x1[t].map(({name:n,label:o,unit:i,optional:s})=>Ot(ow(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var Rc={holds:"",paid:""},sl=t=>({of:"studio",at:`/packs/${L(t)}`,in_order:!0,and:(e,n)=>n?e:si(wn(e,"/packs"),[`/serves_as/${L(t)}`])});function sw(t){let e=l.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function rw(t,e){let n=new Set(sw(e).map(o=>o.toLowerCase()));return ct("studio",t).find(o=>n.has(o.toLowerCase()))}var Do=t=>rw("/packs",t),aw=t=>ye().includes(t)||l.fats.some(e=>e.id===t)?"g":void 0,lw="money packs";function uw(t){return r`${ct("studio","/packs").map(e=>T1(e,t))}
  ${So({key:"pack",label:"Which material comes in packs?",offers:ye(),taken:e=>Do(e)!==void 0,take:rl})}`}function T1(t,e){let n=sl(t),o=et(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${x(n).map((i,s)=>S1(n,s,o,aw(t),e))}
    <div class="row">
      ${Y(n,r`Another pack of ${o}`,()=>j(n,Rc,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${L(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${R1(t)}
    </div>
  </div>`}var iw=t=>`/serves_as/${L(t)}`;function R1(t){let e=iw(t),n=D("studio",e),o=new Set(sw(t)),i=[...new Set([...ye(),...ct("studio","/packs")])].filter(a=>!o.has(a)&&g("studio",iw(a))===void 0),s=a=>d=>wn(A(d,e,a||void 0),"/serves_as");return!n&&(ye().some(a=>o.has(a))||!i.length)?u:_t({label:"Another make of",of:"studio",at:e,answers:i.map(a=>[a,et(a)]),unsaid:"nothing: a material of its own",optional:!0,take:a=>re("studio",`${et(t)}: ${a?et(a):"a material of its own"}`,s(a))})}function S1(t,e,n,o,i){let s=`${t.at}/${e}`,a=(c,p,m={})=>f({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Bt("studio",`${s}/holds`);return r`<div class="row" id=${W(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${a("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${a("paid","Paid for it",{told:i})} ${D1(s)}
    ${a("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?a("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${H(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function D1(t){let e=`${t}/from`,n=ct("studio","/sellers");return n.length?_t({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:e,optional:!0,short:!0})}function rl(t){let e=`/packs/${L(t)}`,[n,o]=[`/prices/${L(t)}`,`/money/prices/${L(t)}`],i=hi().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(O1),a=s.length?[...s,Rc]:[Rc];Se([["studio",c=>A1(A(si(c,[n]),e,a))],...i!==void 0?[["run",c=>si(c,[o])]]:[]]),q(s.length?`The price of ${et(t)} is its first pack now`:`${et(t)} added`),Et("studio",lw),G(Pe(W(sl(t),a.length-1)))}var A1=t=>$(t,"/currency")?t:A(t,"/currency",Fa());function O1(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var dw=t=>r`<button
    type="button"
    aria-label="Another pack size of ${et(t)}"
    @click=${()=>rl(t)}
  >
    Another pack size
  </button>`;function cw(t){let e=Do(t),n=tt("studio",sl(e).at).length,o=()=>{Et("studio",lw),G(Pe(W(sl(e),0)))};return r`<div class="row">
    <p>${et(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${et(t)}" @click=${o}>To its packs</button>
  </div>`}function pw(){let t=e=>`/have/${L(e)}`;return r`${ct("studio","/have").map(e=>{let n=aw(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${f({of:"studio",label:et(e),at:t(e),unit:n,hint:o,short:!0})}
      ${bo("studio","/have",e,et(e))}
    </div>`})}
  ${So({key:"have",label:"Which material stands on the shelf?",offers:ye(),taken:e=>rw("/have",e)!==void 0,take:e=>B("studio",`${et(e)} added`,t(e),"",X("studio",t(e)))})}`}var mw=({key:t})=>`money ${t}`;function gw(){if(!We())return u;let t=M1(Fa());return!$n()&&t.some(e=>l.open.has(`folded studio ${mw(e)}`))&&Ta(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${P1()}
    <div class="folds">
      ${t.map(e=>P({of:"studio",name:mw(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var P1=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${Ao({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Ao=t=>f({...t,of:"studio"}),al=t=>ct("studio",t).map(et).join(", "),_w=t=>["/work",t].join("/");function M1(t){let e=(i,s,a={})=>Ao({label:s,at:i,told:t,short:!0,...a}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let a=D("studio",i);return a&&`${a}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:al("/packs"),body:()=>uw(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:al("/sellers"),body:()=>C1(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:al("/have"),body:pw},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:x(ki).map(i=>et(String($(i,"/material")))).join(", "),body:W1},{key:"work",title:"Work",pointers:["/work"],told:o(_w("paid_an_hour"),` ${t} an hour`),body:()=>E1(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:I1},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${Ao({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:al("/asking"),body:()=>j1(e)}]}var F1=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((a,{from:d},c)=>d===t?A(a,`/packs/${L(i)}/${c}/from`,n):a,o),e);function C1(t){let e=(n,o)=>`/sellers/${L(n)}/${o}`;return r`${ct("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${bo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${cs({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:F1(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Ao({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${ri({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>X("studio",e(n,"postage"))})}`}var ki={of:"studio",at:"/packaging"},L1=t=>!ye().includes(t)&&!l.fats.some(e=>e.id===t);function W1(){let t=e=>x(ki).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${x(ki).map((e,n)=>B1(String($(e,"/material")??""),n))}
    ${So({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>ct("studio",e)).filter(L1),taken:t,take:e=>j(ki,{material:e,each_piece:""},e)})}`}function B1(t,e){let n=Do(t)!==void 0||g("studio",`/prices/${L(t)}`)!==void 0;return r`<div class="row" id=${W(ki,e)}>
    ${Ao({label:`${et(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>rl(t)}>
            Say its price
          </button>`}
    ${H(ki,e,t)}
  </div>`}function E1(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(_w("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${el()}
    </div>
    ${C("studio","/work")}`}var fw=(t,e)=>T({of:"studio",question:t,at:`/tax/${e}`,chosen:D("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),I1=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Ut({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${Ao({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${fw("The prices you pay are","prices_paid")} ${fw("The prices you ask are","prices_asked")}`})}`,hw=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function j1(t){let e=n=>`/asking/${L(n)}`;return r`${ct("studio","/asking").map(n=>q1(n,e(n),t))}
  ${ri({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>X("studio",e(n))})}
  ${H1(t)}`}function q1(t,e,n){let o=g("studio",e)??{},i=hw.map(([a])=>a).find(a=>o[a]!==void 0),s=a=>Ao({label:a,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${bo("studio","/asking",t)}
    </div>
    <div class="row">${cs({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:hw,puts:a=>({[a]:""}),then:a=>`${e}/${a}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var zs={of:"studio",at:"/price_endings"},H1=t=>r`<p class="question">A price ends in</p>
    ${x(zs).map((e,n)=>r`<div class="row" id=${W(zs,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${H(zs,n,`ending ${n+1}`)}
        </div>`)}
    ${Y(zs,"Add an ending",()=>j(zs,"","An ending"))}`;var N1=t=>st()&&Do(t)===void 0&&hi().length>0;function $w(){if(!We())return r`<button type="button" @click=${U1}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${L(e)}/${n}`;return{run:Ma.run+o,studio:Ma.studio+o}};return r`<div class="row">
      ${Ot(an,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${ye().map(e=>Do(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${Ot(t(e,"paid"),{label:`${et(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Ot(t(e,"for"),{label:`for how much ${et(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${N1(e)&&Ze(t(e,"paid"))?dw(e):u}
            </div>`:cw(e))}
    </div>
    ${ye().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function U1(){let t=st()?"studio":"run",e=t==="studio"?an.studio:an.run;B(t,"Prices added",e,"",X(t,e))}var xi=t=>({run:t,studio:t}),Sc=t=>({run:`/pipe/${t}`,studio:`/${t}`}),z1=xi("/scales"),ww=xi("/spoilage"),J1=xi("/pots");function Dc(t){return Xt({name:"studio",title:"My studio",result:$t(V1()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>K1(t)})}function V1(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function K1(t){let e=Q1(t),n=[...e.flatMap(o=>o.all),...Zt()?[da]:[]];return r`${st()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Fu(n)}}>
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
              ${qn(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${st()?r`${gw()} ${C$()} ${nw()}`:u}`}function Q1(t){let e=ae(),n=[{title:"Scales",all:[z1],body:G1},{title:"Losses",all:[xc("pour"),...e?[xc("pipe")]:[]],body:()=>Y1(e,t)},{title:"Rejects",all:[ww],body:X1},{title:"Pot and lye jug",all:[J1],body:tD},{title:"Moulds owned",all:bw().map(({shared:o})=>o),body:nD},{title:"Prices paid",all:hi(),body:$w}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Sc),body:eD},{title:"Weigh-cups",all:[],body:pg}),st()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[bi],body:gc}),n}function G1(){let t=(e,n)=>r`${Ot(xi(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Ot(xi(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function Y1(t,e){return r`<div class="row">
      ${Tc("pour",t?"Base":void 0)} ${t?Tc("pipe","Topping"):u}
    </div>
    ${e?Z1(e):u}`}function Z1({pour:t,pipe:e,...n}){let o=gt({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:d})=>`${s}: ${O(E(l.units,a))} in the pieces, ${O(E(l.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var X1=()=>Ot(ww,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function tD(){let t=(e,n,o)=>Ot(xi(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function eD(){let t=(n,o,i,s=!1)=>Ot(Sc(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>Ze(Sc(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function bw(){return["/pour",...x(Dt).map((e,n)=>wi(n))].flatMap(e=>{let n=D("run",`${e}/mould`);return n?[{mould:n,shared:{run:t$(e),studio:`/moulds_owned/${L(Cu(n))}`}}]:[]})}function nD(){return r`<div class="row">
    ${bw().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=Ze(e)===void 0?kc(t):void 0,i=()=>{ew(t,`/moulds_owned/${L(Cu(t))}`)};return r`${Ot(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&st()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Ac(t){let e=t&&ai(t);return r`${iD(t)}
    <div class="set-up">${yw(e)} ${oD()} ${Dc(e)}</div>`}function yw(t){return r`${U$(t)} ${ae()?J$(t):u}
  ${k$()?R$(t):u} ${x$()?D$(t):u}
  ${Zt()?M$(t):u} ${Z$(t)} ${hc()?F$(t?.whole):u}`}function oD(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${ae()?u:r`<button type="button" @click=${mg}>Add a topping</button>${fg()}`}
      ${d$()} ${gg()}
      ${hc()?u:r`<button type="button" @click=${f$}>Draft the label</button>`}
    </div>
  </section>`}function vw(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${ii("Mould","/pour/mould",l.files?.moulds)}
    ${ii("Base","/pour/formula",l.files?.formulas)}
    ${ae()?ii("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function iD(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${vw(t?sD(t):u)}
    <div class="batches">${t?g$(t):u} ${mc()}</div>
  </section>`}function sD(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,d=It(t)?`${a} batches, ${K(o,"filling")}`:Gr(o,i);return M({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function rD(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(aD);return[he({part:"Run"},()=>[vw(),mc()]),...e.map(n=>he({part:String(l.formulas[n].now.name||"Formula")},()=>Zg(n))),yw(),Dc()]}var aD=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;mh(rD);var lD={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function kw(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${lD[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function xw(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function Ti(t){let e=Ho(t);return e?.finished_at?"done":e||No(t)?"under way":"not begun"}var uD=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function dD(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>Ti(s)===i);return o("under way")??o("not begun")??1}function Oc(){let t=uD(),e=dD(t),n=Ho(e),o=xw(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?xw(n.plan,e):o}}var xn=({kept:t})=>!t&&l.is_old,Ri=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var cD=6,pD={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Rw({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${Ti(i)}`;return e>cD?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>Tw(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:lt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${pD[Ti(i)]}</span> ${i}<small>
          ${Ti(i)}</small
        >`]),i=>Tw(Number(i)))}function Tw(t){Wm(t),q(`Batch ${t}, ${Ti(t)}`)}var ll="";function Sw(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return mD(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!ho(n,a).is_done).length,s=()=>i?Dw(e.id):void Zl(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Ow(e.begun_at)}; its weights stay as they were then.</p>
    ${ll===e.id?Aw(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Zl(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${No(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function mD({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Ow(n)}.</p>
    ${ll===o?Aw("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Ui(e)}):r`<button type="button" @click=${()=>Dw(o)}>Start this batch anew</button>`}
  </div>`}function Dw(t){ll=t,ot(),G(U("batch-stays"))}function Aw(t,e,n){let o=()=>{ll="",ot(),G(U("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var fD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Ow=t=>fD.format(new Date(t));var hD={pour:"Base",pipe:"Topping"},Pw=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Mw(t,e){let[n,o]=[Pw(t),Pw(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${hD[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...d,...c]}var Pc=3,Mc=new Map,Fc="";function gD(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!Uc(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Q(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Mw(n.vessels,o.vessels),d=new Set(Ri(n).map(({text:p})=>p)),c=Ri(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return a.length||c.length?{told:a,dangers:c,mark:o.mark}:void 0}function Fw(t){let e=gD(t),{kept:n}=t;if(!e||!n)return u;if(Mc.get(n.id)===e.mark)return wD(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${_D(e)}
    </p>
    ${$D(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${ie}</strong> As it is now: ${i}</p>`)}
    ${Fc===n.id?vD(t):bD(t,e)}
  </div>`}function _D({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Pc;return r`${t.slice(0,Pc).join("; ")}${n>0?` and ${n} more.`:"."}`}var $D=({told:t})=>t.length>Pc?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function wD(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Mc.delete(t),ot())}>What has changed</button>
  </div>`}function bD(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Mc.set(o,e),ot(),G(U("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>yD(t)}>Start this batch anew</button>`:u}
  </div>`}function yD(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Ui(t.number);Fc=o,ot(),G(U("keep-weighing"))}function vD(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Fc="",ot(),G(U("run-title"))},o=()=>{n(),Ui(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Cw=({text:t})=>r`<p class="danger"><strong>${ie}</strong> ${t}</p>`;function Lw(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=Ri(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Cw)}</div>`:u}var kD=({vessel:t})=>["lye","lye_pot","share"].includes(t),xD=({batter:t},e)=>!t||!e.batter||t===e.batter;function Ww(t,e){if(!kD(e))return u;let n=Ri(t).filter(o=>xD(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Cw(o)} ${TD(o)}`)}</div>`:u}function TD({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${SD}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>RD(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function RD(t){Qt(t),requestAnimationFrame(()=>G(X(t,"/superfat")))}function SD(){h({view:"watch"}),G(U("watch-title"))}var Cc=(t,e)=>r`<p class="do ${xn(t)?"old":""}">${e}</p>`;function Bw(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${O(St(l.units,o))} below the brim`;return Cc(t,r`${s}, <b>${O(E(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Ew(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Cc(t,r`Whip until the level weigh-cup holds <b>${O(E(l.units,n.net_g))}</b>.`):u}function Iw(t,{batch:e}){let{pipe:n}=e;return n?Cc(t,r`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function jw(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Ke(n)===o?n:e,""]}function qw(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return AD(t,e,n);let o=DD(t,e,n);return o===void 0?void 0:{place:o}}function DD({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return Nw(i,s,t,n);case"layers":return PD(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Lc(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Lc(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let a=o.filter(d=>d.vessel==="melt");return a.length===e.decorations.length?`decorations.${a.indexOf(i)}.make_g`:void 0}case"share":return OD(i,s,t,n)}}function AD({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:a})=>({name:s,value:a,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Hw=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function OD(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Hw(t)),s=t.batter==="pipe"?i.reduce((a,{count:d})=>a+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:Nw(t,e,n,o,"lye")}function Lc(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function Nw(t,e,n,o,i=t.vessel){let s=Hw(t),[a,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(a?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function PD(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Lc(t.name,e[o].colours,`${n}.${o}.colours`)}function Wc(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>ho(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Uw(n)}>
    <div class="vessel-head">
      <h3 id=${Uw(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Ww(e,n)}
    ${Xr(n.rows,({key:s})=>s,s=>MD(t,e,n,s))}
  </section>`}var Uw=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function MD(t,e,n,o){let{is_done:i,is_waiting:s}=ho(t.number,o.key),[a,d]=jw(l.units,o),c=xn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${F(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>FD(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${a}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${CD(t,e,n,o)}
  </div>`}function FD(t,{mark:e},n,o){if(!xn(t))return Fm(t.number,e,n.key,o.checked);o.checked=!o.checked,q("Not ticked: what is struck through is not to be weighed.")}function CD(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,a=i&&s&&qw(i,s,o);if(!a)return u;let d=`weigh.${t.number}.${o.key}`,c=l.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in a?Su(a.place):Hr(a.working)}</div>`:u}`}function Bc(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function zw(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||LD(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Ec=!1;async function LD(t,e){let{planned:n}=l;if(Ec||!n)return;Ec=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Ks({...n,run:A(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...WD(s,t)}})}catch(s){if(!(s instanceof v))throw s;h({whip_today:{...o,complaint:Q(s.complaint)}})}finally{Ec=!1}}function WD(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var jc,Ic,BD=t=>jc??(Ke(t)==="oz"||!t&&l.units==="us"?"oz":"g");function Jw(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=Gl(t.number),i=BD(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${_n("weigh_cup")}</div>
    ${Oe("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${F(Ic??o)}
        ?disabled=${s}
        @input=${a=>Ic=a.target.value}
        @change=${a=>ID(t,e,a.target.value,i)}
      />
      ${lt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],ED)}
    </div>
    ${jD(t,e,n,o)} ${HD(e,n)}
  </div>`}function ED(t){jc=t,ot()}function ID(t,{mark:e},n,o){Ic=void 0;let i=Qe(n)?`${n.trim()} ${o}`:n.trim();if(jc=void 0,i===Gl(t.number))return ot();if(xn(t))return q("Not taken: the weights are not those of what is typed."),ot();Cm(t.number,e,i)}function jD(t,e,n,o){if(!o)return u;let i=zw(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${qD(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function qD({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${K(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function HD(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
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
                  <th scope="row">${O(E(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Js="pour",Vw=()=>Oc().kept!==void 0;function Kw(){_r();let t=Oc(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${Js} aria-labelledby="run-title">
    ${ND(t)} ${zD(t)}
    ${t.weights&&e?r`${Lw(t.weights)} ${Fw(t)} ${JD(t,t.weights)}`:u}
    ${Sw(t)}
  </section>`}function ND(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${UD(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Rw(t)}
    </div>
  </div>`}function UD(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>ho(t.number,d).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${nn(e,n)}</b>, ${s} of ${i.length} weighed`}function zD({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,d=o!==void 0&&No(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Bm}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function JD(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Wc(t,e,m));return r`${ZD(d,i)}
    <div class="batters ${d?"two":""}">
      ${ul("ahead","To have ready",c(s))}
      ${ul("base",d?"Base":"Batter",VD(t,e,o("pour"),s))}
      ${d?ul("topping","Topping",[...c(o("pipe")),GD(t,e),Bc(o("pipe"),QD(t,e))]):u}
      ${ul("after","At the end",c(a))}
    </div>`}var ul=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function VD(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(d=>Wc(t,e,d));return[...s(n.filter(a=>!i(a))),Bw(t,e),...s(n.filter(i)),Bc([...o,...n],KD(t,e))]}var Qw=(t,e,n=u)=>r`<p class=${xn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>Gt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,KD=(t,{batch:e})=>Qw(t,[e.pour],jn("superfat_as_weighed")),QD=(t,{batch:e})=>Qw(t,e.pipe?.whippings??[]),GD=(t,e)=>r`${Ew(t,e)} ${Jw(t,e)} ${Iw(t,e)}`,YD={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function ZD(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>YD[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Js)||(Js="pour"),r`<div class="narrow">${lt("What is shown",Js,o,XD)}</div>`)}function XD(t){Js=t,ot(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Gw=()=>r`${mi(Vw()?"No new weights can be given.":void 0)} ${Kw()}`;var tA={"set-up":Ac,watch:kw,money:J_,days:N_,mould:G_,print:X_};function Yw(t){let e=r`${pr().map(o=>tn(o))} ${cr().map(en)}`;if(t==="weigh")return r`${e} ${Gw()}`;let{plan:n}=l;return r`${e} ${mi()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?tA[t](n):eA(t)}`}function eA(t){return l.complaint?t==="set-up"?Ac():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var nA=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Xw(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${nA}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=ca(t.sell),s=e.trim()&&n&&o&&i,a=()=>{ut(async()=>{await Pr({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${F(e)}
          @input=${d=>y(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Zw(t,"mould","Mould",oA())} ${Zw(t,"formula","Base",iA())}
      ${pa("new-run-sell",t.sell,d=>y(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var oA=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],iA=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Zw(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>y(t,{[e]:a.target.value})}>
      <option value="" .selected=${F(t[e]==="")}>choose ...</option>
      ${o.map(([a,d])=>r`<option value=${a} .selected=${F(a===t[e])}>${d}</option>`)}
    </select>
  </div>`}var sA=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function eb(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort(sA),n=t.filter(o=>o.shipped);return r`${$e("Runs")} ${Xw()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Le(e,tb):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Le(n,tb)}
    </section>
    ${we("run")}`}function tb(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":K(e,"piece"),n??"",o?`due ${yt(o)}`:"",i?`made ${yt(i)}`:s?`changed ${yt(s)}`:""].filter(Boolean);return on({kind:so,one:t,facts:a,picture:rA(n),open:()=>ze(t.file)})}var rA=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;function nb(){let t=Cn();return r`${$e("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${ta(Dn,"Each file is named by the studio, or by the runs that use its tips.",e=>Vi(Dn,e))}
      ${t?Mh(t):u}
      ${ea({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Lh(e)):Tr(Dn,zu(e)),tried:ut})}
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
          ${ts().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${we("tips")}`}var sb=document.getElementById("page");function rb(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${q_()} ${Kf()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${l.is_old&&!ce(t)&&t!=="order"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${lA()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var aA={runs:eb,orders:C_,formulas:t_,moulds:e_,fats:Uh,tips:nb};function lA(){let{view:t,fault:e}=l;return ln(t)?Yw(t):ce(t)?aA[t]():t==="formula"?Yg():t==="order"?F_():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Wp(()=>{jg(),pe(rb(),sb),cA()});pe(rb(),sb);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ce(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=Ja();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return kf();mn()});function uA(){if(!l.run.file)return qc();h({fault:void 0}),mn(),dt()}function qc(){h({fault:void 0}),Kg().catch(t=>{h({fault:dA(t)}),t instanceof v&&t.may_pass&&window.setTimeout(qc,2e3)})}function dA(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var ob=new ResizeObserver(([{target:t}])=>ab(t.offsetHeight)),ib=null;function cA(){let t=document.querySelector(".foremost");t!==ib&&(ob.disconnect(),t?ob.observe(t):ab(0),ib=t)}var ab=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);zf();Vg();Nc(t=>{pi(),t&&uA()});qc();
