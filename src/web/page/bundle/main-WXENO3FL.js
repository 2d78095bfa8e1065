import{A as hu,B as G,C as ot,D as gu,E as _u,F as Zt,G as be,H as Ro,I as le,J as lr,K as $u,L as wu,N as bu,O as yu,P as vu,a as tu,b as eu,c as Q,d as v,e as nu,f as ou,g as xo,h as Tn,i as $t,j as Rn,k as iu,l as ar,m as su,n as To,o as ru,p as au,q as Ri,r as lu,s as uu,t as Oe,u as du,v as cu,w as pu,x as Fe,y as mu,z as fu}from"./chunk-WVIJCWLQ.js";var Si=globalThis,Pi=Si.ShadowRoot&&(Si.ShadyCSS===void 0||Si.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,xu=Symbol(),ku=new WeakMap,Ai=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==xu)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Pi&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=ku.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&ku.set(n,e))}return e}toString(){return this.cssText}},Tu=t=>new Ai(typeof t=="string"?t:t+"",void 0,xu);var Ru=(t,e)=>{if(Pi)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Si.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},ur=Pi?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return Tu(n)})(t):t;var{is:rg,defineProperty:ag,getOwnPropertyDescriptor:lg,getOwnPropertyNames:ug,getOwnPropertySymbols:dg,getPrototypeOf:cg}=Object,Di=globalThis,Su=Di.trustedTypes,pg=Su?Su.emptyScript:"",mg=Di.reactiveElementPolyfillSupport,So=(t,e)=>t,dr={toAttribute(t,e){switch(e){case Boolean:t=t?pg:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},Pu=(t,e)=>!rg(t,e),Au={attribute:!0,type:String,converter:dr,reflect:!1,useDefault:!1,hasChanged:Pu};Symbol.metadata??=Symbol("metadata"),Di.litPropertyMetadata??=new WeakMap;var ye=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Au){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&ag(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=lg(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);s?.call(this,l),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Au}static _$Ei(){if(this.hasOwnProperty(So("elementProperties")))return;let e=cg(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(So("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(So("properties"))){let n=this.properties,o=[...ug(n),...dg(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(ur(i))}else e!==void 0&&n.push(ur(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Ru(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:dr).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),l=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:dr;this._$Em=i;let d=l.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let l=this.constructor;if(i===!1&&(s=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??Pu)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),s!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:l}=s,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};ye.elementStyles=[],ye.shadowRootOptions={mode:"open"},ye[So("elementProperties")]=new Map,ye[So("finalized")]=new Map,mg?.({ReactiveElement:ye}),(Di.reactiveElementVersions??=[]).push("2.1.2");var pr=globalThis,Du=t=>t,Mi=pr.trustedTypes,Mu=Mi?Mi.createPolicy("lit-html",{createHTML:t=>t}):void 0,mr="$lit$",ve=`lit$${Math.random().toFixed(9).slice(2)}$`,fr="?"+ve,fg=`<${fr}>`,rn=document,Po=()=>rn.createComment(""),Do=t=>t===null||typeof t!="object"&&typeof t!="function",hr=Array.isArray,Eu=t=>hr(t)||typeof t?.[Symbol.iterator]=="function",cr=`[ 	
\f\r]`,Ao=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Ou=/-->/g,Fu=/>/g,on=RegExp(`>|${cr}(?:([^\\s"'>=/]+)(${cr}*=${cr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Cu=/'/g,Lu=/"/g,Iu=/^(?:script|style|textarea|title)$/i,gr=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=gr(1),M=gr(2),Hx=gr(3),St=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Bu=new WeakMap,sn=rn.createTreeWalker(rn,129);function Wu(t,e){if(!hr(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Mu!==void 0?Mu.createHTML(e):e}var Hu=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",l=Ao;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,w=0;for(;w<c.length&&(l.lastIndex=w,m=l.exec(c),m!==null);)w=l.lastIndex,l===Ao?m[1]==="!--"?l=Ou:m[1]!==void 0?l=Fu:m[2]!==void 0?(Iu.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=on):m[3]!==void 0&&(l=on):l===on?m[0]===">"?(l=i??Ao,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?on:m[3]==='"'?Lu:Cu):l===Lu||l===Cu?l=on:l===Ou||l===Fu?l=Ao:(l=on,i=void 0);let b=l===on&&t[d+1].startsWith("/>")?" ":"";s+=l===Ao?c+fg:_>=0?(o.push(p),c.slice(0,_)+mr+c.slice(_)+ve+b):c+ve+(_===-2?d:b)}return[Wu(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Mo=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,l=0,d=e.length-1,c=this.parts,[p,m]=Hu(e,n);if(this.el=t.createElement(p,o),sn.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=sn.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(mr)){let w=m[l++],b=i.getAttribute(_).split(ve),R=/([.?@])?(.*)/.exec(w);c.push({type:1,index:s,name:R[2],strings:b,ctor:R[1]==="."?Fi:R[1]==="?"?Ci:R[1]==="@"?Li:ln}),i.removeAttribute(_)}else _.startsWith(ve)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Iu.test(i.tagName)){let _=i.textContent.split(ve),w=_.length-1;if(w>0){i.textContent=Mi?Mi.emptyScript:"";for(let b=0;b<w;b++)i.append(_[b],Po()),sn.nextNode(),c.push({type:2,index:++s});i.append(_[w],Po())}}}else if(i.nodeType===8)if(i.data===fr)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(ve,_+1))!==-1;)c.push({type:7,index:s}),_+=ve.length-1}s++}}static createElement(e,n){let o=rn.createElement("template");return o.innerHTML=e,o}};function an(t,e,n=t,o){if(e===St)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Do(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=an(t,i._$AS(t,e.values),i,o)),e}var Oi=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??rn).importNode(n,!0);sn.currentNode=i;let s=sn.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new Sn(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new Bi(s,this,e)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(s=sn.nextNode(),l++)}return sn.currentNode=rn,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Sn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=an(this,e,n),Do(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==St&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Eu(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Do(this._$AH)?this._$AA.nextSibling.data=e:this.T(rn.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Mo.createElement(Wu(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Oi(i,this),l=s.u(this.options);s.p(n),this.T(l),this._$AH=s}}_$AC(e){let n=Bu.get(e.strings);return n===void 0&&Bu.set(e.strings,n=new Mo(e)),n}k(e){hr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(Po()),this.O(Po()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Du(e).nextSibling;Du(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},ln=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,l=!1;if(s===void 0)e=an(this,e,n,0),l=!Do(e)||e!==this._$AH&&e!==St,l&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=an(this,d[o+c],n,c),p===St&&(p=this._$AH[c]),l||=!Do(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Fi=class extends ln{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Ci=class extends ln{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Li=class extends ln{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=an(this,e,n,0)??u)===St)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Bi=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){an(this,e)}},ju={M:mr,P:ve,A:fr,C:1,L:Hu,R:Oi,D:Eu,V:an,I:Sn,H:ln,N:Ci,U:Li,B:Fi,F:Bi},hg=pr.litHtmlPolyfillSupport;hg?.(Mo,Sn),(pr.litHtmlVersions??=[]).push("3.3.3");var ue=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Sn(e.insertBefore(Po(),s),s,void 0,n??{})}return i._$AI(t),i};var _r=globalThis,An=class extends ye{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ue(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return St}};An._$litElement$=!0,An.finalized=!0,_r.litElementHydrateSupport?.({LitElement:An});var gg=_r.litElementPolyfillSupport;gg?.({LitElement:An});(_r.litElementVersions??=[]).push("4.2.2");var Nu=()=>{},$r=!1;function Uu(t){Nu=t}function z(){$r||($r=!0,queueMicrotask(()=>{$r=!1,Nu()}))}function zu(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var At=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of zu(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function C(t,e,n){return wr(t,zu(e),n)}function wr(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=wr(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},l=wr(s[o],i,n);return l===void 0?delete s[o]:s[o]=l,s}var nt=["pour","pipe","apart"],wt=["studio","own_fats","own_tips"],Ei=t=>wt.includes(t);var qu={};function Qt(t,e){(qu[t]??=[]).push(e)}function lt(t,e){for(let n of qu[t]??[])n(e)}var Pt=t=>t.slice(0,t.lastIndexOf("/")+1),Bt=t=>t.slice(t.lastIndexOf("/")+1),Ju=(t,e)=>{let n=Pt(t);return n?_g(n+e):e};function _g(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ce(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Pn(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===s))return s}}var $g=["mould","formula","file","own_fats","own_tips"];function br(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?br(o,i):$g.includes(n)?[i]:[]})}function yr(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...br(t)])[n,o]=[C(n,i,void 0),C(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function vr(t,e){let n=["/id",...br(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?C(i,s,$(e,s)):i,o)}var J=(t,e)=>({name:t,label:e,unit:"mm"}),Le=J("height","Floor to brim"),Ii={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},kr={block:{words:"Box, loaf or slab",measures:[J("length","Longer side at the brim"),J("width","Shorter side"),Le,Ii,{...J("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[J("floor_diameter","Across the floor"),J("brim_diameter","Across the brim"),Le]},fluted_cup:{words:"Fluted cup",measures:[J("floor_diameter","Across the floor"),J("brim_diameter","Across the brim"),Le,{name:"flutes",label:"Flutes",unit:"",count:!0},J("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},J("across_flats","Across the flats"),Le,Ii]},dome:{words:"Bowl",measures:[J("diameter","Across the brim"),Le]},half_ball:{words:"Half ball",measures:[J("diameter","Across the brim")]},ball:{words:"Ball",measures:[J("diameter","Across")]},half_ring:{words:"Half ring",measures:[J("centre_diameter","Ring, middle to middle of the tube"),J("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[J("outer_floor_diameter","Cup, across the floor"),J("outer_brim_diameter","Cup, across the brim"),J("post_floor_diameter","Post, at its foot"),J("post_brim_diameter","Post, at its top"),Le]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[J("height","Height"),J("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Le,Ii],points:{columns:[J("x","From the left"),J("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[J("side","Straight edge, tip to round"),Le,Ii]}},Vu=Object.fromEntries(Object.entries(kr).map(([t,{words:e}])=>[t,e])),Dn=t=>kr[t]?.measures??[],Be=t=>kr[t]?.points;var xr=(t,e)=>String($(t,e)??"").trim(),Oo=t=>xr(t,"/shape/kind"),Xt=(t,e)=>$(t,`/${e}`)!==void 0,Tr=t=>["body","skin"].includes(xr(t,"/mesh/role"));function Et(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Ku(t,e){return(Be(Oo(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Fo(t){return Et(t,"/shape/points").flatMap((e,n)=>Ku(t,e).every(Boolean)?[n]:[])}function Wi(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Et(t,"/shape/points").flatMap((n,o)=>e(Ku(t,n))?[o]:[])}var Rr=t=>Et(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Gu(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(l=>$(t,`${o}/${l}`));e=C(e,o,s)};return Be(Oo(t))&&n("/shape/points",Fo(t)),n("/water/weighings",Rr(t)),e}function Hi(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Fo(t):Rr(t);return`${n}/${s[Number(o)]??o}${i}`}function Co(t){let e=[],n=i=>xr(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(Xt(t,"shape")){let i=Oo(t);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of Dn(i))o(c||n(`/shape/${l}`),d.toLowerCase());let s=Be(i);s&&o(Fo(t).length>=s.least,`${s.least} points at least`)}if(Xt(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Rr(t).length>0,"a weighing of water")}return!Tr(t)&&!Xt(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var un={name:"run",list:"runs",new_name:({shipped:t,file:e,now:n})=>t?Bt(e):Ce(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Mn={name:"formula",list:"formulas",new_name:({shipped:t,file:e,now:n})=>t?Bt(e):Ce(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Sr=(t,e)=>({name:t,list:e,new_name:({file:n})=>Bt(n),written:n=>n,is_begun:()=>!0}),ji=Sr("studio","studios"),Ni=Sr("fats","fats"),Ui=Sr("tips","tips"),Dt={name:"mould",list:"moulds",new_name:({now:t})=>Ce(String(t.name),".json"),written:t=>({...Gu(t),name:String(t.name??"").trim()}),is_begun:t=>Xt(t,"shape")||Xt(t,"mesh")};var Yu={},Zu={kind:un,id:"",file:"",version:null,shipped:!1,now:Yu,saved:Yu,unanswered:[]},te={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Zu,formulas:{},beside:{},past:[],future:[],is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(bg()),folded:new Set,units:wg(),announcement:""},a=te;function wg(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Qu="set-up ";function bg(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function yg(){let t=[...te.open].filter(e=>e.startsWith(Qu));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(te,t),z()}var E=t=>h({announcement:t});function y(t,e){Object.assign(t,e),z()}function de(t,e){let{[t]:n,...o}=te.formulas;h({formulas:e?{...o,[t]:e}:o})}function ce(t,e){let n=new Set(te[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Qu)&&yg()}function On(t=Zu){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,complaint:void 0,typed:void 0,measured:void 0})}function ut(t){te.open.has(t)||h({open:new Set(te.open).add(t)})}function dn(t,e,{name:n,note:o}={}){if(!te.files)return;let i={file:e,name:String(n??""),note:String(o??""),shipped:!1},s=te.files[t].filter(d=>d.file!==e),l=te.files[t].findIndex(d=>d.file===e);s.splice(l<0?s.length:l,0,i),h({files:{...te.files,[t]:s}})}async function pe({kind:t,name:e,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:l=[],formulas:d=[],moulds:c=[],studios:p=[],fats:m=[],tips:_=[]}=a.files??{},w=Pn(e,[...l,...d,...c,...p,...m,..._]);i?.(w);let b=await vg(w,n,o);if(dn(t.list,w,ot(b.there.text)??{name:w}),b.is_new||s?.(b.there))return b.there}}async function vg(t,e,n){try{return{is_new:!0,there:await Rn({file:t,version:null,text:e,from:n})}}catch(o){if(!(o instanceof v)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var zi=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function cn({kind:t,id:e,file:n,version:o,shipped:i,now:s},l){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:G(s),copy:l};localStorage.setItem(zi(t)+e,JSON.stringify(d))}catch{}}function Ar(t,e){try{return JSON.parse(localStorage.getItem(zi(t)+e)??"null")??void 0}catch{return}}var Ee=(t,e)=>localStorage.removeItem(zi(t)+e),Xu=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function qi(t){let e=zi(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Ar(t,o)??[])}var kg=300,j=t=>t.now!==t.saved;function Lo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Mt(t,e,n=e){let o=await yu(e),i=xg(t,JSON.parse(o.text),o.shipped),s=Ar(t,n),l=s?.copy&&o.shipped?await Tg(t,s,i):void 0;if(l)return Ee(t,n),Mt(t,l);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Rg(p,s,o),p}var xg=(t,e,n=!1)=>t.name==="run"&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Tg(t,e,n){if(!a.files?.[t.list].some(s=>s.file===e.copy))return;let o=ot(e.text),i=ot((await $t(e.copy)).text);if(!(!o||!i||G(o)===G(n)))return yr(t.written(o),i)?e.copy:void 0}function Rg(t,e,n){let o=ot(e.text);if(!o||G(o)===G(t.now))return Ee(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),ad(t,n))}function ht(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),cn(t),lt("edited",{file:t,before:n})}var td=new WeakMap,Pr=async t=>td.get(t),me=t=>ed(t,()=>Sg(t)),Fn=t=>ed(t,()=>t.shipped?nd(t,od):Promise.resolve());function ed(t,e){let n=Pr(t).then(e);return td.set(t,n.catch(()=>{})),n}async function Sg(t){!j(t)||t.theirs||await nd(t,t.shipped||!t.file?od:id)}async function nd(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:Q(n.complaint)}),n}}async function od(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),l=await pe({kind:e,name:e.new_name(t),text:G(s),from:i,about_to:m=>cn(t,m),is_own:({text:m})=>i!==void 0&&yr(s,ot(m)??{})}),d=JSON.parse(l.text),c=vr(s,d),p=t.now===o?d:c(t.now);Ee(e,n),y(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),j(t)&&cn(t),i!==void 0&&lt("copied",{file:t,from:i,renamed:c})}async function id(t){let{version:e,now:n}=t,o=G(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{Ji(t,n,(await Rn({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;sd(t,i.answer),j(t)&&!t.theirs&&await id(t)}}function Ji(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),j(t)?cn(t):Ee(t.kind,t.id),dn(t.kind.list,t.file,e)}function sd(t,{version:e,text:n}){if(n===G(t.kind.written(t.now)))return Ji(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=j(t)||t.theirs?void 0:ot(n);i?Ag(t,i,e):ad(t,{version:e,text:n})}function Ag(t,e,n){lt("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),Ji(t,e,n),E(`${t.file} was changed outside this page, and stands here as it is now.`),lt("gave_way",{file:t})}var rd=t=>y(t,{set_aside:void 0,is_taken:void 0});function ad(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),cn(t),E(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),lt("conflict",{file:t})}function ld(t){if(!t.theirs)return;let e=ot(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}lt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),Ji(t,e,t.theirs.version),lt("gave_way",{file:t})}function ud(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),cn(t),lt("unwritten",{file:t}))}var pn=({theirs:t})=>t?.text===null;function dd(t){pn(t)&&(Ee(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),E(`${t.file} stays deleted.`),lt("left_deleted",{file:t}))}function cd(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;ht(t,e),y(t,{set_aside:o?void 0:n})}var pd=t=>(t.theirs??t).version;function md(t,e){y(t,{id:e,file:e}),lt("renamed",{file:t,renamed:n=>n})}async function fd(t){let{version:e,text:n}=await $t(t.file),o=ot(n);if(!o||t.theirs||e===t.version)return;let i=vr(t.now,o);if(j(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),lt("renamed",{file:t,renamed:i})}var hd=t=>t.shipped||!t.file?[]:[[t.file,pd(t)]];async function Dr(t,e,n,o){let i=t.file,s=()=>pd(t)===e&&t.file===i;if(!s()||(await Pr(t),!s()))return!1;o(),await Mr();let l=await Pg(i,n);return await Pr(t),s()&&(sd(t,l),j(t)&&!t.theirs&&lt("unwritten",{file:t})),!0}async function Pg(t,e){let n=await e(t);return n===null?{version:n,text:null}:$t(t)}var Mr=()=>new Promise(t=>setTimeout(t,kg));var Dg=300,Mg=1200,Vi="",gd=0;function Bo(){let t={run:{file:a.run,now:a.run.now}};for(let e of nt){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of wt){let n=a.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Ie(t=""){let e=performance.now();t&&t===Vi&&e-gd<=Mg&&a.past.length||Or(Bo()),h({future:[]}),Vi=t,gd=e}var Or=t=>h({past:[...a.past,t].slice(-Dg)});function Cn(t){Or(_d(Bo(),t,()=>t.saved??{}))}function _d(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Fr(t,e){let n=o=>o.map(i=>_d(i,t,e));h({past:n(a.past),future:n(a.future)})}function Ki(){let t=a.past.at(-1);t&&(h({past:a.past.slice(0,-1),future:[...a.future,Bo()]}),wd(t,"Undone"))}function $d(){let t=a.future.at(-1);t&&(h({past:[...a.past,Bo()],future:a.future.slice(0,-1)}),wd(t,"Redone"))}function wd(t,e){Vi="",h({typed:void 0});for(let n of[...wt,...nt,"run"])Og(n,t);E(e)}function Og(t,e){let n=e[t];if(Ei(t))return Fg(t,n);let o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&de(t,n.file),n.file.now!==n.now&&ht(n.file,n.now))}function Fg(t,e){e&&e.file===a.beside[t]&&e.file.now!==e.now&&ht(e.file,e.now)}var Gi=t=>t===a.run||nt.some(e=>a.formulas[e]===t)||wt.some(e=>a.beside[e]===t);Qt("giving_way",({file:t})=>{Gi(t)&&(Vi="",Or(Bo()),h({typed:void 0}))});for(let t of["copied","renamed"])Qt(t,({file:e,renamed:n})=>Fr(e,n));function Ln(t){return t==="run"?a.run:Ei(t)?a.beside[t]:a.formulas[t]}var Cg=t=>Ln(t)?.now,g=(t,e)=>$(Cg(t),e),F=(t,e)=>String(g(t,e)??"");function gt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function X(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function W(t,e,n){let o=Ln(t);!o||$(o.now,e)===n||(Ie(`${t} ${e}`),ht(o,C(o.now,e,n)))}function bd(t,e){let n=Ln(t);n&&(Ie(),h({typed:void 0}),ht(n,e(n.now)))}function Bn(t){Ie(),h({typed:void 0});for(let[e,n]of t){let o=Ln(e);o&&ht(o,n(o.now))}}var ke=t=>Ju(a.run.file,t);function Ot(t,e){let n=ke(t);return e?.some(o=>o.file===n)?n:t}var Cr=(t,e)=>{let{[t]:n,...o}=a.beside;h({beside:e?{...o,[t]:e}:o})};function vd(t){for(let e of wt)a.beside[e]===t&&Cr(e,void 0)}async function Lg(t,e){try{let n=await Mt(t,e);return j(n)&&Cn(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function mn(t,e,n){let o=a.beside[t];if(o?.file===n)return o;let i=await Lg(e,n);return Cr(t,i),i&&j(i)&&lt("unwritten",{file:i}),i?.theirs&&lt("conflict",{file:i}),i}var kd=()=>ke("studio.json");async function En(t=!1){let e=kd(),n=(a.files?.studios??[]).some(o=>o.file===e);a.beside.studio?.file!==e&&(n||t?await mn("studio",ji,e):Cr("studio",void 0))}async function xd(){a.run.shipped&&await Fn(a.run);let t=kd();await mn("studio",ji,t)||(await Bg(t),await mn("studio",ji,t))}async function Bg(t){try{await Rn({file:t,version:null,text:G({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}dn("studios",t)}var yd=(t,e)=>Pt(t.file)+e;async function Eg(t){try{return ot((await $t(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function Yi(t){let e=a.formulas[t];if(!e)return;e.shipped&&await Fn(e);let n=String($(e.now,"/own_fats")??"");if(n){let l=yd(e,n);return mn("own_fats",Ni,await Eg(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Pt(l.file)===Pt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Td(Ni,yd(e,"my.fats.json"),i);return W(t,"/own_fats",Bt(s)),mn("own_fats",Ni,s)}async function Lr(){a.run.shipped&&await Fn(a.run);let t="/pipe/beads/own_tips",n=String($(a.run.now,t)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return mn("own_tips",Ui,ke(n));let o=Pt(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Pt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Td(Ui,`${o}my.tips.json`,s);return a.beside.studio?W("studio","/own_tips",Bt(l)):W("run",t,Bt(l)),mn("own_tips",Ui,l)}async function Td(t,e,n){let{file:o}=await pe({kind:t,name:e,text:G(n)});return dn(t.list,o),o}function Rd(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(Bt(e));for(let i of nt)t===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&W(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===a.beside.own_tips&&n(a.run.now,o)&&W("run",o,t.file)}var Eo=[],Io=()=>Eo.at(-1);function Br(t){Eo=[...Eo,t],h({list_told:t.words}),E(t.words)}async function Pd(){let t=Io();t&&(await t.undo(),Eo=Eo.slice(0,-1),h({list_told:""}),E("Undone"),await We())}var We=async()=>h({files:await Tn()});async function Dd(t,e){let{$schema:n,...o}=JSON.parse((await $t(e.file)).text),i=`${e.name||e.file}, copy`,s={...o,name:i,...t.name==="run"?{id:crypto.randomUUID()}:{}},{file:l}=await pe({kind:t,name:t.new_name(Lo(t,s)),text:G(s),from:e.file});return await We(),Br({words:`Copied ${e.name||e.file}.`,undo:async()=>{await ar(l,!0)}}),l}var Md=t=>/(\.(run|formula))?\.json$/.exec(t)?.[0]??"",Wo=t=>Bt(t).slice(0,-Md(t).length||void 0),Od=(t,e)=>Pt(t)+e+Md(t),Sd=t=>[a.run,...nt.map(e=>a.formulas[e])].find(e=>e?.file===t);async function Fd(t,e,n){let o={name:e.name,note:e.note,stem:Wo(e.file)};await Ad(t,e.file,n),await We();let i=Od(e.file,n.stem);Br({words:`Changed ${n.name||i}.`,undo:()=>Ad(t,i,o)})}async function Ad(t,e,{name:n,note:o,stem:i}){let s=Sd(e),l=s??await Mt(t,e),{note:d,...c}=l.now,p=o?{...c,name:n,note:o}:{...c,name:n};if(G(p)!==G(l.now)&&(s&&Ie(),ht(l,p),await me(l),l.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let m=Od(e,i);if(m===e)return;let{renamed_in:_}=await iu(e,m);s&&md(s,m);for(let w of _){let b=Sd(w);b&&await fd(b)}}async function Cd(t,e){let{removed:n}=await ar(t.file,e);a.run.file===t.file&&On(),await We(),Br({words:`Removed ${t.name||t.file}.`,undo:async()=>{await su(n)}})}async function He(){for(let t of["pour","pipe"]){let e=$(a.run.now,`/${t}/formula`);typeof e=="string"&&e?await Ig(t,Ot(e,a.files?.formulas)):de(t,void 0)}}async function Ig(t,e){if(a.formulas[t]?.file===e)return;let n=nt.map(o=>a.formulas[o]).find(o=>o?.file===e);if(de(t,n),!n)try{let o=await Er(e);de(t,o),j(o)&&lt("unwritten",{file:o}),o.theirs&&lt("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function Er(t){let e=await Mt(Mn,t);return j(e)&&Cn(e),e}var Ld=t=>ou("GET",`/api/bench?run=${encodeURIComponent(t)}`),Bd=t=>xo("/api/bench/tick",t),Ed=t=>xo("/api/bench/weigh_cup",t),Id=(t,e)=>xo("/api/bench/anew",{run:t,batch:e}),Wd=(t,e)=>xo("/api/bench/finish",{run:t,batch:e});var Wg=1e4,Ir=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Ir);var Zi=[],In=()=>`bench ${a.files?.folder??""}`;function ee(){try{return[...JSON.parse(localStorage.getItem(In())??"[]"),...Zi]}catch{return Zi}}function Hd(t){try{t.length?localStorage.setItem(In(),JSON.stringify(t)):localStorage.removeItem(In()),Zi=[]}catch{Zi=t}}var Hg=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function jd(t){let e={...t,id:crypto.randomUUID(),tab:Ir,at:Date.now()};Hd([...ee().filter(n=>!Hg(n,e)),e])}var Qi=t=>Hd(ee().filter(e=>!t(e))),Wr=()=>ee().find(t=>t.tab===Ir||Date.now()-t.at>Wg);var Hr=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],jr=()=>wt.flatMap(t=>a.beside[t]??[]),Nd=t=>t.filter(e=>e.theirs),xe=t=>Nd([...Hr(t==="apart"?["apart"]:["pour","pipe"]),...jr()])[0],Xi=()=>[a.run,...Hr(nt),...jr()].filter(t=>t.is_taken&&!t.theirs),ts=()=>Nd([a.run,...Hr(nt),...jr()]);var Ho=()=>a.formulas.apart?"apart":"run",Ud=t=>h({dangers:{...a.dangers,[Ho()]:t}});function Nr(t){let e=t.cautions.filter(n=>n.severity==="danger");Ud(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function zd(t){t.lye_heavy&&Ud([{text:Q(t),is_of_heat:!1}])}var jg=400,Ng=2e3,es=0;function jo(){clearTimeout(es),es=window.setTimeout(()=>{ne()},jg)}async function ne(){clearTimeout(es);let{run:t}=a;try{await me(t),j(t)&&!t.theirs&&t===a.run&&jo()}catch(e){if(!(e instanceof v))throw e;e.may_pass&&(es=window.setTimeout(()=>{ne()},Ng))}}var qd=Promise.resolve();function Wn(){let t=qd.then(Ug);return qd=t.catch(()=>{}),t}async function Ug(){for(let t of nt){let e=a.formulas[t];!e||!j(e)||e.theirs||(e.shipped&&t!=="apart"&&await Fn(a.run),await me(e))}for(let t of wt){let e=a.beside[t];e&&j(e)&&!e.theirs&&await me(e)}}function Jd(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Ot(String(n?.mould??""),a.files?.moulds);return{file:Pn("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...zg(e)}}}function zg(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var oe=new Map,No=new Set,qg={changed:{},unreadable:[]},Hn=()=>new Set([...nt.flatMap(t=>a.formulas[t]??[]),...wt.flatMap(t=>a.beside[t]??[])]);async function Vd(){let t=Jg(),e=new Set([...Hn()].map(({file:o})=>o));for(let o of oe.keys())!t.has(o)&&!e.has(o)&&oe.delete(o);for(let o of No)t.has(o)||No.delete(o);let n=[...t].filter(o=>!oe.has(o));for(let[o,i]of await Kd(n))oe.has(o)||oe.set(o,i)}async function Kd(t){let e=t.filter(o=>!No.has(o)),n=e.length?await To(new Map(e.map(o=>[o,null]))):qg;return qr(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Ur=async t=>(await Kd([t])).get(t)??null,zr=()=>new Map([...oe].filter(([t])=>!No.has(t)));function Jg(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(ke(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(ke("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Hn()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Pt(o)+s).add(s)}e($(a.beside.studio?.now,"/own_tips"));for(let o of wt)t.delete(a.beside[o]?.file??"");return t}function Gd(t,{changed:e}){let n=Object.keys(e).filter(o=>oe.has(o)&&oe.get(o)===t.get(o));for(let o of n)oe.set(o,e[o]);return n}var qr=t=>t.forEach(e=>No.add(e));function Yd(){return[...Hn()].flatMap(({file:t,version:e})=>{let n=oe.get(t)??e;return oe.delete(t),n===e?[]:[t]})}var Zd=0,Jr=()=>Zd;function Vr(t){++Zd,h({is_old:!0,changed_beside:t})}var Vg=1e3,Kg=450,ns=!1,fn=!1,Kr=0;function Y(){h({is_old:!0}),ns?fn=!0:jn()}async function jn(){if(ns){fn=!0;return}ns=!0,Qd(!1);try{do fn=!1,await Gg();while(fn)}finally{ns=!1,Qd(!0),z()}}async function tc(){let{run:t}=a,e={file:t.file,run:t.now},n=await vu(e)?.catch(()=>{});!n||t!==a.run||a.plan||Xu()||(h({plan:n,planned:e}),Nr(n))}var Qd=t=>{document.documentElement.dataset.settled=String(t)};function Xd(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function Gg(){let t=Xd();try{await Wn(),await Vd(),t=Xd();let{apart:e}=a.formulas;if(xe(e?"apart":"run"))return h({is_old:!0});let n=Jr(),o=e?Jd(e.file):{file:a.run.file,run:a.run.now},i=await Ri(o);if(window.clearTimeout(Kr),!t())return void(fn=!0);h({plan:i,planned:o,complaint:void 0}),Nr(i);let s=n===Jr();h({is_old:fn||!s}),s&&h({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(fn=!0);Yg(e)}}function Yg(t){h({is_old:!0}),window.clearTimeout(Kr);let e=()=>{h({complaint:t.complaint}),zd(t.complaint)};a.complaint||!a.plan?e():Kr=window.setTimeout(e,Kg),t.may_pass&&window.setTimeout(Y,Vg)}var ec=2e3,zt=t=>h({bench:{...a.bench,...t}}),Zg=()=>zt({acts:ee()});addEventListener("storage",({key:t})=>{t===In()&&Zg()});function os(){let{file:t}=a.run;!t||a.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:ee()}}),Nn().then(Qr))}function is(){let{run:t,version:e}=a.bench;return e===void 0||t!==a.run.file?void 0:{run:t,version:e}}var Uo=0;async function Nn(){let{run:t}=a.bench,e=Uo;try{let n=await Ld(t);if(t!==a.bench.run)return;if(e!==Uo)return await Nn();nc(n)}catch(n){if(!(n instanceof v))throw n;if(t!==a.bench.run)return;zt({failed:Q(n.complaint)}),oc(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Nn(),ec)}}var nc=({batches:t,version:e,complaints:n=[]})=>zt({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),oc=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Un=t=>a.bench.batches.find(e=>e.batch===t),Yr=t=>a.bench.acts.filter(({run:e,batch:n})=>e===a.bench.run&&n===t),zn=t=>Yr(t).length>0;function hn(t,e){let n=Yr(t).find(i=>i.key===e),o=Un(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Zr(t){let e=Yr(t).find(n=>n.reading!==void 0);return(e?e.reading:Un(t)?.weigh_cup)??""}function ic(t,e,n){let{run:o}=a.bench,s=Un(t)!==void 0||!a.planned?void 0:G(a.planned.run);jd({run:o,batch:t,seen:e,text:s,...n}),zt({acts:ee(),chosen:t,told:void 0}),Qr()}var sc=(t,e,n,o)=>ic(t,e,{key:n,done:o}),rc=(t,e,n)=>ic(t,e,{reading:n||null}),Gr=!1;async function Qr(){if(!Gr){Gr=!0;try{await navigator.locks.request(In(),Qg)}finally{Gr=!1}ee().length&&setTimeout(()=>{Qr()},ec)}}async function Qg(){for(let t=Wr();t;t=Wr())if(!await Xg(t))return}async function Xg(t){let{id:e}=t;try{let n=await t_(t);return++Uo,Qi(o=>o.id===e),e_(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return oc(n)?(zt({unsent:Q(n.complaint)}),!1):(await n_(t,n),!0)}}function t_({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:l}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Bd({...d,key:i,done:s??!1}):Ed({...d,reading:l??null})}function e_(t,e){let n=ee();if(e!==a.bench.run)return zt({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,l)=>s.batch-l.batch);zt({acts:n,batches:i,unsent:void 0})}async function n_(t,{complaint:e}){++Uo,Qi(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${Q(e)}.`;zt({acts:ee(),unsent:void 0,told:{batch:t.batch,words:n}}),E(n),Y(),await Nn()}async function zo(t){let{run:e}=a.bench;await ac(t,async()=>{let n=await Id(e,t);return Qi(o=>o.run===e&&o.batch===t),n})}var Xr=t=>ac(t,()=>Wd(a.bench.run,t));async function ac(t,e){let{run:n}=a.bench;try{let o=await e();if(++Uo,n!==a.bench.run)return;nc(o),zt({acts:ee(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;zt({told:{batch:t,words:Q(o.complaint)}})}}var lc=t=>zt({chosen:t,told:void 0}),uc=()=>zt({told:void 0});var qo=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function qn(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:l,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function cc(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let w=3*c[p+_],b=3*c[p+(_+1)%3],R=d[w+i]-e,q=d[b+i]-e;if(R>0==q>0)continue;let Lt=R/(R-q),nn=[1e3*(d[w]+Lt*(d[b]-d[w])),1e3*s*(d[w+o]+Lt*(d[b+o]-d[w+o]))];R>0?m.push(nn):m.unshift(nn)}m.length===2&&l.push([m[0],m[1]])}return l}function pc(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],l=n.get(e(i[0]))?.shift();for(;l;)s.push(l[0]),l=n.get(e(l[1]))?.shift();s.length>2&&o.push(s)}return o}function Jo(t){let e=t.positions,[n,o,i,s,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),l=Math.min(l,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:pc(cc(t,c)),left:1e3*i,right:1e3*s,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function mc(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>pc(cc(t,n+s*o,"level"))).reduce((s,l)=>dc(l)>1.001*dc(s)?l:s)}function dc(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function ta(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>e||Math.max(l,p)<e))for(let m of l===p?[s,c]:[s+(e-l)/(p-l)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var fc=40,o_=2e3,ea=0;async function hc(t){let e=await Fe({kind:"glb",gauge:t}),n=qn(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Jn(t){let[e,n]=await Promise.all([Oe(t),hc(t)]),o=Jo(n);return{gauge:e,outline:o,above:mc(n,o)}}async function i_(t){let{pockets:e}=await Oe(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:fc},(i,s)=>`${(n*(s+1)/fc).toFixed(4)} mm`);return Oe({...t,depth:o})}function ie(){s_()}async function s_(){let t=$(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++ea,n=Ot(t,a.files?.moulds);try{let[o,i]=await Promise.all([i_({file:n}),hc({file:n})]);e===ea&&h({measured:{mould:n,gauge:o,outline:Jo(i)},measuring_failed:void 0})}catch(o){if(e!==ea)return;if(!(o instanceof v))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ie,o_)}}var Vo=()=>h({own_fats:{}});function je(t){let e=Ko(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function Ko(t){let e=a.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=a.beside.own_fats;if(o&&[Pt(e.file)+n,n].includes(o.file))return _c(o.now)??"none";let i=`${e.file}
${n}`,s=a.own_fats[i];return s||(gc(i,"waiting"),r_(n,e.file).then(l=>gc(i,l)),"waiting")}var gc=(t,e)=>h({own_fats:{...a.own_fats,[t]:e}});async function r_(t,e){for(let n of new Set([Pt(e)+t,t])){let o=_c(await a_(n));if(o)return o}return"none"}var _c=t=>Array.isArray(t?.fats)?t.fats.map(l_):void 0;async function a_(t){try{return ot((await $t(t)).text)}catch{return}}var l_=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:u_(n)});function u_(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Vn=[],Go;function ss(){Vn.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Vn.push(t);Go===void 0&&wc()}function $c(t){let e=a.own_moulds[t];return!e&&t!==Go&&!Vn.includes(t)&&Vn.push(t),Go===void 0&&Vn.length&&wc(),e}async function wc(){for(;(Go=Vn.shift())!==void 0;){let t=Go,e=await d_(t);h({own_moulds:{...a.own_moulds,[t]:e}})}}async function d_(t){try{let{pockets:e}=await Oe({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var vc=()=>h({own_tips:{}}),na=!1;function oa(){return!a.tips&&!na&&(na=!0,pu().then(t=>h({tips:t}),kc).finally(()=>na=!1)),a.tips??[]}function ia(t){let e=ke(t),n=a.beside.own_tips;if(n?.file===e)return yc(n.now);let o=a.own_tips[e];return o||!t||a.typed?o??[]:(bc(e,[]),$t(e).then(({text:i})=>bc(e,yc(ot(i))),kc),[])}var bc=(t,e)=>h({own_tips:{...a.own_tips,[t]:e}});function yc(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function kc(t){if(!(t instanceof v))throw t}var rs=300,c_=5e3,Ac=2e3,p_=500,xc=!1,Yo=new AbortController,Pc=()=>Yo.abort(),Dc=()=>document.visibilityState==="hidden";function Mc(){if(xc)return;xc=!0;let t=async()=>{Yo=new AbortController;let e=await m_(Yo).then(()=>Dc()?c_:rs,()=>Yo.signal.aborted?rs:Ac);await Tc(rs),await Tc(e-rs,Yo.signal),t()};t()}var Tc=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),Oc=()=>[a.run,...a.mould?[a.mould.open]:[],...Hn()],Fc=()=>new Map(Oc().flatMap(hd)),Rc=()=>JSON.stringify([[...Fc().keys()],[...zr().keys()],is()?.run??null]);async function m_(t){let[e]=Yd();e!==void 0&&await Sc(e);let[n,o]=[Fc(),zr()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),l=s&&!Dc()?await f_(i,t):await To(i,is());l.bench!==void 0&&await Nn(),qr(l.unreadable),await h_(n,l);let[d]=Gd(o,s?l:await To(o));d!==void 0&&await Sc(d)}async function f_(t,e){let[n,o]=[Rc(),Date.now()],i=window.setInterval(()=>{(Rc()!==n||Date.now()-o>ru+Ac)&&e.abort()},p_);try{return await au(t,is(),e.signal)}finally{window.clearInterval(i)}}async function h_(t,{changed:e}){let n=Hn();for(let o of Oc()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await g_(o,i):await Dr(o,i,Ur,()=>{}))}}async function g_(t,e){await Dr(t,e,Ur,()=>Vr(t.file))&&(Vo(),Y())}async function Sc(t){Vr(t),await Mr(),Vo(),vc(),h({measured:void 0}),ie(),ss(),await Promise.all([He(),En(!0)]),Y()}async function Cc(t){let e=await bu();h({files:e});let n=wu(e,t.run);try{await Ne(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Lc(){let[t,e]=await Promise.all([du(),cu()]);h({fats:t,catalogue:e})}var __=()=>new Promise(t=>setTimeout(t,400));async function Ne(t,e="weigh"){if(!t)return h({view:"runs"});a.run.file&&j(a.run)&&await ne();let n=await Mt(un,t);On(n),os(),await Promise.race([tc(),__()]),h({view:e}),localStorage.setItem("run",n.file),j(n)&&(Cn(n),jo());let o=jn().finally(ie);await Promise.all([o,He(),En()]),Mc()}var $_=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function as(t){let e=a.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};$_()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!a.run.shipped&&(o.money=e.money));let{file:i}=await pe({kind:un,name:Ce(t.name,".run.json"),text:G(o)});ut("set-up pour"),await Ne(i,"set-up")}var w_="examples/plain_bars.run.json";function qt(t){Vo();let e=be(a.view)?a.view:a.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Zo(t){let e=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===t);if(e)return qt(e);a.run.file||await Ne(w_,"reading"),await b_(t)}async function b_(t){let e={past:a.past,future:a.future};h({run_steps:e,past:[],future:[]});try{de("apart",await Er(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),qt("apart"),jn()}async function y_(){let t=a.formulas.apart!==void 0;return await ls()?(h({view:t?"weigh":a.came_from,typed:void 0}),!0):!1}async function ls(){return a.formulas.apart?await v_()?(jn(),!0):!1:!0}async function v_(){try{await Wn()}catch(e){if(!(e instanceof v))throw e;return h({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return E("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;de("apart",void 0);let t={...a.dangers,apart:[]};return h({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Bc(t){let e=a.view==="formula"&&a.formulas[a.formula_of]===t,n=a.formulas.apart===t;for(let o of["pour","pipe"])a.formulas[o]===t&&de(o,void 0);n&&await ls(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function sa(t){let{file:e}=a.formulas.apart;await y_()&&W("run",`/${t}/formula`,e)}var k_=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Ec=t=>Wc(k_(t));async function Ic(t,e){let{$schema:n,...o}=JSON.parse((await $t(t)).text);await Wc({...o,name:e},t)}async function Wc(t,e){let n=Ce(String(t.name),".formula.json"),{file:o}=await pe({kind:Mn,name:n,text:G(t),from:e});await Zo(o)}var x_=30,T_=1200,Hc=0,ra=!1,aa=!1;function ua(t,e,n){let o=e==="mesh"?a.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ca()}var fe=()=>h({mould:void 0,mesh:void 0}),Kn=(t,e,n)=>ua(Lo(Dt,t),e,n);async function Nc(t,e){let n=await Mt(Dt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),ua(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function Uc({id:t,file:e,text:n}){let o=e?await Mt(Dt,e,t):Lo(Dt,JSON.parse(n),t);ua(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var B=()=>a.mould,D=()=>B().open.now;function dt(t,e){R_(t),ht(B().open,C(D(),t,e))}var la="",jc=0;function R_(t){let e=performance.now(),{past:n}=B();(t!==la||e-jc>T_||!n.length)&&y(B(),{past:[...n,D()]}),y(B(),{future:[]}),[la,jc]=[t,e]}function zc(){let{past:t,future:e,open:n}=B(),o=t.at(-1);o&&(y(B(),{past:t.slice(0,-1),future:[...e,n.now]}),Jc(o,"Undone"))}function qc(){let{past:t,future:e,open:n}=B(),o=e.at(-1);o&&(y(B(),{past:[...t,n.now],future:e.slice(0,-1)}),Jc(o,"Redone"))}function Jc(t,e){la="",h({typed:void 0}),ht(B().open,t),E(e)}var S_=["name","note","owned","unmould_after"];function da(t){let e=D(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!S_.includes(l)))&&y(B(),{is_old:!0});let i=n.some(l=>B().complaint?.field===`/${l}`),s=n.some(l=>!["name","note"].includes(l));(B().is_old||i||s)&&ca()}function ca(){clearTimeout(Hc),Hc=window.setTimeout(()=>{A_()},x_)}async function A_(){if(ra)return void(aa=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!Xt(e,"shape")&&!Xt(e,"mesh"))){if(Co(e).length)return y(t,{complaint:void 0});ra=!0;try{let n=Dt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Jn(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&pa(n)}finally{ra=!1,aa&&ca(),aa=!1}}}function pa(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,l=e?`${n}; ${o}`:t.message;y(B(),{complaint:{field:Hi(D(),e),line:l,keep:i&&{...i,at:Hi(D(),i.at)},about:s===void 0?void 0:Hi(D(),`${e}/${s}`)}})}var us=t=>Object.values(a.formulas).includes(t),Qo=t=>Object.values(a.beside).includes(t),Vc=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function P_(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&ie(),Vc(t)!==Vc(e)&&He(),Y(),jo()}var D_=Y;function M_(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(Bt(e))?C(s,o,t.file):s;Fr(a.run,i),i(a.run.now)!==a.run.now&&ht(a.run,i(a.run.now))}}async function O_(t){t===a.run?(On(),localStorage.removeItem("run"),h({view:"runs"})):t===a.mould?.open?fe():Qo(t)?vd(t):await Bc(t),await We(),a.run.file&&Y()}function Kc(){Qt("edited",({file:t,before:e})=>{t===a.run?P_(e,t.now):us(t)||Qo(t)?D_():t===a.mould?.open&&da(e)}),Qt("gave_way",({file:t})=>{if(t===a.mould?.open)return da();t===a.run&&(ie(),He().then(Y)),Y()}),Qt("left_deleted",({file:t})=>{O_(t)}),Qt("unwritten",({file:t})=>{t===a.run?ne():(us(t)||Qo(t))&&Y()}),Qt("conflict",({file:t})=>{(us(t)||Qo(t))&&h({is_old:!0})}),Qt("renamed",({file:t})=>{t===a.run&&(localStorage.setItem("run",t.file),ie(),He()),Y()}),Qt("copied",({file:t,from:e})=>{us(t)&&M_(t,e),Qo(t)&&Rd(t,e),t===a.run&&(localStorage.setItem("run",t.file),En().then(Y))})}var gn=r`<span aria-hidden="true">⚠</span> Danger`;function Xo(t,e="",n){let o=Ue(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${gn}</strong> ${i}</p>`)}
  </div>`:u}function Ue(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Gc(){let t=Zt(a.view)||Ho()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Yc=()=>Gc().length>0;function Zc(){let t=Gc(),e=L_();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${gn}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${F_()?r`<button type="button" @click=${C_}>To the question</button>`:u}
          </div>`:u}
  </section>`}var F_=()=>xe(Ho())!==void 0&&!Zt(a.view);function C_(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function L_(){if(!a.run.file||a.view==="reading")return"";let t=xe(Ho());return t&&pn(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}function Gn(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:t}}var it=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,B_=t=>t.cut?["loaf","loaves"]:["cast","casts"];function he(t,{pieces:e,casts:n}){let o=t.cut?it(e,"bar"):it(e,"piece");return n===e?o:`${o} from ${it(n,...B_(t))}`}var E_=t=>t===1?"once":`${t} times`,ma=t=>t.batches.length>1,bt=t=>t.pieces.batches>1;function ti(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function tt(t){return bt(t.whole)?`one batch, ${he(t.whole,t.batch)}`:""}var Qc=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function fa(t,e){return Qc(t)?`${he(t.whole,e)}${e.count>1?`, whipped ${E_(e.count)}`:""}`:""}function ds(t,e){let n=fa(t,e);return n&&`one whipping: ${n}`}var Xc=t=>bt(t.whole)||Qc(t),cs=(t,e)=>`${it(t,"filling")} of ${it(e,"cavity","cavities")}`;var tp=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,ha={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${tp}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${tp}<path class="measure" d="M20 10h80" />`}};var ga=t=>`term ${t}`;function Te(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(ga(t))?"true":"false"}
    aria-label="What ${ha[t].name} means"
    @click=${()=>ce("open",ga(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function se(t){if(!a.open.has(ga(t)))return u;let{name:e,words:n,drawing:o}=ha[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var Yn=t=>r`<span class="term">${Te(t)}${se(t)}</span>`;var ms=28.349523125,ip=25.4,I_=29.5735295625;function ge(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function x(t,e){return W_(ge(t,e))}var W_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Jt(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${ge(t,e)} %`:_a(t)?"just below 0 %":"0.0 %"}var _a=t=>t<0||Object.is(t,-0),sp=t=>Math.abs(t-Math.round(t))<1e-6;function ep(t){return t?[0,1,2,3].find(e=>sp(t*10**e))??3:0}function np(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function H_(t){return[0,1,2].find(e=>t.every(n=>sp(n*10**e)))??3}function fs(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function yt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-H_([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var rp=.001;function ps(t,e,n,o,i=1e-9){let s=10**n;return ge(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var op=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function j_(t){if(!op.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return op.find(e=>Math.abs(e*ms-t)<.6*rp)}function et(t,e,n="nearest"){let o=e.scale_step_g||.1,i=j_(o),s=Math.min(.6*rp,o/2),l=i?ps(e.g,1,np(o),n):ps(e.g,1,ep(o),n,s),d=i?ps(e.g,ms,ep(i),n,s):ps(e.g,ms,np(o/ms),n),[c,p]=[`${e.g_text??l} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:fs(t,c,p)}var O=(t,e,n=1,o="nearest")=>et(t,{g:e,scale_step_g:10**-n},o);function _t(t,e,n=1){return fs(t,`${ge(e,n)} ml`,`${ge(e/I_,2)} US fl oz`)}function pt(t,e){return fs(t,`${x(e,1)} mm`,N_(e))}function N_(t){let e=Math.round(Math.abs(t)/ip*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),l=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",l].filter(Boolean).join(" ")} in`}var $a=([t])=>t,T=([t,e])=>e?`${t} (${e})`:t;function ap(t,e){return fs(t,`${ge(e,0)} \xB0C`,`${ge(e*1.8+32,0)} \xB0F`)}function Zn(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??ip;return n*o}function _e(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Qn=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function Xn(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function ze(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}var lp=t=>t.goes_into==="lye",up=({role:t})=>t==="alkali",U_=t=>up(t)?"down":"nearest",_n=(t,e)=>et(t,e,U_(e));function hs(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>lp(i)),n=({one:i})=>i.role==="water",o=({one:i})=>up(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function dp(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!lp(e))}function to(t,e=()=>{}){if(!t.theirs)return u;let n=pn(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{ud(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>dd(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>ld(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function eo(t){if(t.theirs||!t.set_aside||Gi(t)&&!t.is_taken)return u;let e=()=>{Gi(t)&&Ie(),cd(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>rd(t)}>Close</button>`:u}
    </div>
  </section>`}var Re={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},gs=t=>(...e)=>({_$litDirective$:t,values:e}),no=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:z_}=ju,cp=t=>t;var mp=t=>t.strings===void 0,pp=()=>document.createComment(""),oo=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(pp(),i),l=o.insertBefore(pp(),i);n=new z_(s,l,t,t.options)}else{let s=n._$AB.nextSibling,l=n._$AM,d=l!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==l._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=cp(c).nextSibling;cp(o).insertBefore(c,i),c=p}}}return n},qe=(t,e,n=t)=>(t._$AI(e,n),t),q_={},_s=(t,e=q_)=>t._$AH=e,fp=t=>t._$AH,$s=t=>{t._$AR(),t._$AA.remove()};var H=gs(class extends no{constructor(t){if(super(t),t.type!==Re.PROPERTY&&t.type!==Re.ATTRIBUTE&&t.type!==Re.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!mp(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===St||e===u)return e;let n=t.element,o=t.name;if(t.type===Re.PROPERTY){if(e===n[o])return St}else if(t.type===Re.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return St}else if(t.type===Re.ATTRIBUTE&&n.getAttribute(o)===e+"")return St;return _s(t),e}});var $n,ei=[],ni=()=>$n!==void 0;function It(t,e,n,o){if(!$n||$n.some(s=>s.id===n))return;let i=ei.flatMap(({part:s})=>s??[]);$n.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:ei.flatMap(({fold:s})=>s??[])})}function Vt(t,e){ei.push(t);try{return e()}finally{ei.pop()}}var hp=()=>{},gp=t=>{hp=t},ws,J_=()=>[a.run.now,...Object.values(a.formulas).map(t=>t.now),...Object.values(a.beside).map(t=>t.now),a.formulas.apart,a.plan,a.fats,a.files];function io(){if(ni())return[];let t=J_();return ws?.of.length===t.length&&t.every((n,o)=>n===ws.of[o])||(ws={of:t,wanted:V_()}),ws.wanted}function V_(){$n=[],ei=[];try{return hp(),$n}finally{$n=void 0}}function _p(t){a.touched.has(t)||h({touched:new Set(a.touched).add(t)})}function $p(t,e){if(a.has_asked)return!1;let n=io().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var st=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Kt(t,e){let n=a.complaint;if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Se(t)&&!$p(t,n.field)?Q(n):void 0}function vt(t,e){return a.complaint?.field===e?Kt(t,e):void 0}function Se(t){let e=a.complaint,n=Ln(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function K_(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function wn(){let t=a.complaint;if(t)for(let e of["run",...nt,...wt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Kt(e,n)&&document.getElementById(st(e,n));if(o)return o}}function G_(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=Y_(t,n);return o&&Qn(e)?`${e.trim()} ${o}`:e}function Y_(t,e){return _e(g(e,t.at))||t.unit||""}var Wt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,wa=!1;addEventListener("pointerdown",()=>wa=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>wa=!1,!0);var Z_=()=>h({typed:void 0});function ba(t){let{id:e}=t.target,n=()=>{Z_(),_p(e)};wa?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var Q_=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,X_=({unit:t=""},e)=>[t.replace("cm2","cm\xB2"),e?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=st(e,t.at),o=g(e,t.at),i=Q_(o),s=a.typed?.key===n,l=s?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!t.optional||t.is_due===!0);d&&It(e,t.at,n,t.label);let c=Kt(e,t.at),p=w=>{let b=w.target.value;h({typed:{key:n,text:b}});let R=G_(t,b);W(e,R===void 0&&t.takes_part?K_(e,t.at):t.at,R)},_=(s&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${ya(r`<label for=${n} data-said=${X_(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${H(l)}
      @input=${p}
      @blur=${ba}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Wt(n,c,_)} ${t.term?se(t.term):u}
  </div>`}var ya=(t,e)=>e?r`<div class="labelled">${t}${Te(e)}</div>`:t;function bs(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var N=t=>()=>document.getElementById(t),mt=(t,e)=>N(st(t,e)),oi=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),t$=()=>document.activeElement;function ct(t){requestAnimationFrame(()=>bs(t()))}function so(t,e,n,o=t$){E(e),bd(t,n),ct(o)}function L(t,e,n,o,i){so(t,e,s=>C(s,n,o),i)}var Je=(t,e,n)=>`${st(t,e)}-${n}`;function I(t,e){let n=vt(t,e);return n?r`<p id=${st(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var wp=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function rt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${wp(e,n,o)}</div>`}function k({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let w=i?Je(t,n,e.replaceAll(/\W+/g,"-")):st(t,o),b=s===void 0&&!m;b&&It(t,o,w,e);let R=i?void 0:vt(t,o),q=Lt=>{if(Lt===s)return;let nn=l.find(([sg])=>sg===Lt)[1];L(t,`${e}: ${nn}`,n,d(Lt),c&&mt(t,c(Lt)))};return r`<div class="field asked ${R?"wants":""}">
    ${ya(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${R||p?`${w}-said`:u}
    >
      ${wp(s,l,q)}
    </div>
    ${Wt(w,R,p)} ${_?se(_):u}
  </div>`}function va(t,e,n,o){let i=st("run",t),s=vt("run",t),l=()=>L("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
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
    ${Wt(i,s)}`}function xt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:l,take:d}){let c=st(e,n),p=Kt(e,n),m=l??F(e,n);!m&&!s&&It(e,n,c,t);let _=!m||o.some(([R])=>R===m),w=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${R=>{let q=R.target.value;d?d(q):W(e,n,q||!s?q:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${w.filter(([R])=>R||s||!m).map(([R,q])=>r`<option value=${R} .selected=${H(R===m)}>${q}</option>`)}</select
    >${Wt(c,p)}
  </div>`}function ro(t,e,n=[]){let o=Ot(F("run",e),n);return xt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Ae({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:l}){let d=Je(t,e,"part"),c=Je(t,e,"add"),p=()=>Vt({part:o},l);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>L(t,`${o} added`,e,s,oi(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>L(t,`${o} removed`,e,void 0,N(c))}
      >
        Remove
      </button>
    </div>
    ${I(t,e)} ${p()}
  </div>`}var bp=(t,e)=>`folded ${t} ${e}`,ao=(t,e)=>ut(bp(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let l=bp(t,e);if(ni())return r`${Vt({fold:l},s)}`;(i||n.some(p=>Kt(t,p)))&&ut(l);let d=a.open.has(l);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),ce("open",l)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var S=({of:t="run",at:e})=>gt(t,e),U=({of:t="run",at:e},n)=>Je(t,`${e}/${n}`,"item"),ys=({of:t="run",at:e},n,o)=>Je(t,`${e}/${n}`,o),e$=({of:t="run",at:e})=>st(t,e);function ii(t,e,n,o){let{of:i="run",at:s,stays:l,and:d=c=>c}=t;so(i,e,c=>d(C(c,s,n.length||l?n:void 0),n.length),o)}function V(t,e,n){let o=S(t);ii(t,`${n} added`,[...o,e],oi(U(t,o.length)))}function n$(t,e,n){let o=S(t).filter((l,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);ii(t,`${n} removed`,o,s?N(ys(t,i,"drop")):mt(t.of??"run",t.at))}function o$(t,e,n,o){let i=[...S(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let l=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;ii(t,`${o} moved ${l}`,i,N(ys(t,e+n,c)))}function Z(t,e,n){let o=S(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let l=(d,c,p)=>r`<button
      type="button"
      id=${ys(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>o$(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${ys(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>n$(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function K(t,e,n){let o=e$(t),i=vt(t.of??"run",t.at);return r`${Wt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}function ka(t){let e=F(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    ${a$(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var i$=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],yp={after:"",mass:""},vp=3,s$={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:vp},()=>yp)}}};function r$(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function a$(t){let e=r$(t);return r`${k({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:i$,puts:o=>({...X(t,"",["drying","water_lost_in_cure"]),...s$[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?l$(t):u}`}function l$(t){let e={of:t,at:"/drying/weighings",least:vp};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(e).map((n,o)=>r`<div class="row named" id=${U(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${Z(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${K(e,"One more weighing",()=>V(e,yp,"weighing"))}`}var u$=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],vs=t=>je(t).map(e=>[e.id,e.name]),kp=["unsaid","Not given"],xp=["none","Holds none"],Tp=t=>t===void 0?"unsaid":t==="none"?"none":"some",d$=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Rp(t,e){return xa(t,`${e}/contains_fat`,[kp,xp,["some","Holds fat"]],vs(t))}function xa(t,e,n,o){let i=Tp(g(t,e)),s=n.some(([l])=>l===i)?i:void 0;return r`${k({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:d$({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${xt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var c$=[kp,xp,["some","Holds acid"],["typed","By what it takes up"]],p$={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Ta(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Tp(g(t,n));return r`${k({of:t,question:"Acid in it",at:n,chosen:o,answers:c$,puts:i=>p$[i]})}
  ${o==="some"?r`<div class="row">
          ${xt({label:"Which acid",of:t,at:`${n}/acid`,answers:u$.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ra(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ra(t,e,n){let o=g(t,e)===!0?"yes":"no";return k({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Ap={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Pp(t,e){let n=Ko(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=gt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&a.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{m$(t,e)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Vt({part:F("own_fats",`${l}/name`)||"Your own fat"},()=>h$(l))})}async function m$(t,e){await Yi(t),ao("own_fats",e);let n=gt("own_fats","/fats").findIndex(o=>o.id===e);ct(N(`f-own_fats-fats-${n}-name`))}var f$=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function h$(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${I("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${k({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:F("own_fats",`${t}/kind`)||void 0,answers:f$,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${g$(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>_$(t)})}`}function g$(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,l=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return r`${k({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function _$(t){let e=(o,i,s,l)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>L("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${I("own_fats",d)}${l()}`:u}
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
    ${$$(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var Sp=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function $$(t){let e=Object.keys(g("own_fats",t)??{}),n=Sp.filter(([l])=>!e.includes(l)),o=l=>Sp.find(([d])=>d===l)?.[1]??l,i=l=>`${t}/${At(l)}`,s=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>f({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>L("own_fats",`${o(l)} removed`,e.length>1?i(l):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${xt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&L("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}var w$=["tsp/lb","tbsp/lb","tsp/kg"],ks=["%","g/kg",...w$].flatMap(t=>[`${t} of fats`,`${t} of batter`]),Mp=[...ks,"% of finished soap","g/kg of finished soap"];function Dp(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function xs(t,e,n,o,i=!1){let s=st(t,e),[l,d]=Dp(F(t,e),o),c=a.typed?.key===s?a.typed.text:l;!i&&!(l.trim()&&d)&&It(t,e,s,l.trim()?`${n}: of what`:n);let m=Kt(t,e),_=(b,R)=>{let q=`${b.trim()} ${R}`.trim();W(t,e,i&&!b.trim()?void 0:q),z()},w=b=>{let R=b.target.value,[q,Lt]=Dp(R,o);h({typed:{key:s,text:R}}),_(q,Lt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${H(c)}
        @input=${w}
        @blur=${ba}
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
        <option value="" .selected=${H(d==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${H(b===d)}>${b}</option>`)}
      </select>
    </div>
    ${Wt(s,m)}
  </div>`}function b$(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var y$=.01+1e-9;function Ts(t,e){let{sum:n,unread:o}=b$(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=y$?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var Op=(t,e)=>je(t).find(n=>n.id===e)?.name??e,si=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),Rs=t=>S(si(t));function Da(t){let e=Rs(t),n=a.picking?.of===t&&a.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>v$(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?Ts("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:It(t,"/fats",st(t,"/fats"),"The fats")}
    ${n?Cp(t):K(si(t),"Add a fat",()=>Fp(t,e.length))} ${M$(t)}
  </section>`}function v$(t,e,n){let o=`/fats/${e}`,i=Op(t,String(n[e].fat??""))||"Which fat?",s=vt(t,`${o}/fat`)??vt(t,o),l=a.picking?.of===t&&a.picking.row===e;return r`<li class="formula-row" id=${U(si(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${st(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Sa():Fp(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${Z(si(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${l?Cp(t):u}
    ${Pp(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${R$(n[e])}`,body:()=>P$(t,e)})}
  </li>`}function Fp(t,e){h({picking:{of:t,row:e,text:""}}),ct(N("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Sa(){let t=a.picking;h({picking:void 0}),t&&ct(mt(t.of,t.row<Rs(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Aa(t,e){let{row:n}=a.picking,o=Rs(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};ii(si(t),`${Op(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],mt(t,`/fats/${n}/share`))}var ri=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Pa(t,e){let n=ri(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>ri(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Cp(t){let{row:e,text:n}=a.picking,o=Rs(t).map(m=>m.fat),i=k$(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),l=s.find(m=>m.id===a.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=l?s.indexOf(l)+m:m>0?0:s.length-1,w=s[(_+s.length)%s.length];w&&(h({picking:{of:t,row:e,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Sa(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(b=>ri(b.name)===ri(n.trim())),w=l??(s.length===1?s[0]:_);m.key==="Enter"&&w&&Aa(t,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
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
      <button type="button" @click=${Sa}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,w=Pa(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[e]===m.id?"true":"false"}
          @click=${()=>Aa(t,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{x$(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function k$(t,e){let n=je(t).filter(l=>Pa(l,e)!==void 0),o=e.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>Pa(l,d)!==void 0).length,s=Math.max(...je(t).map(i));return s?je(t).filter(l=>i(l)===s):[]}async function x$(t,e){if(!await Yi(t))return;let o=e.trim(),i=T$(o,[...a.fats,...gt("own_fats","/fats")]),s=gt("own_fats","/fats").length;W("own_fats",`/fats/${s}`,{...Ap,id:i,name:o}),Aa(t,i),ao("own_fats",i),ct(mt("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function T$(t,e){let n=ri(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}function R$(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var S$=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],A$={published:void 0,one:"",range:{low:"",typical:"",high:""}};function P$(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,l=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${k({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:S$,puts:d=>A$[d],hint:D$(t,F(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Ra(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function D$(t,e){let n=je(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function M$(t){let e=Ko(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=F(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var O$=t=>nt.includes(t);function Ss(){let t=a.complaint;return!t?.field||t.lye_heavy?!1:io().some(({of:e,at:n})=>Se(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function ai(){let t=a.complaint?io():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>F$(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function F$({of:t,id:e,folds:n}){for(let o of n)ut(o);h({has_asked:!0}),O$(t)?(a.view!=="formula"||a.formula_of!==t)&&qt(t):a.view!=="set-up"&&!(t==="own_fats"&&a.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>ct(N(e)))}var Lp="danger-of-superfat";function Ma(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Ue(t).length?Lp:void 0})}
    </div>
    ${Xo(t,Lp)} ${C$(t)} ${H$(t,e)}
  </section>`}function C$(t){let e=gt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${k({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>L$(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>B$(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${Ts("The two",e.map(i=>i.share))}
        </p>`:u}`}function L$(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function B$(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),l=vt(t,i)??vt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${E$(e.purity_range)}`,body:()=>I$(t,i)})}
  </div>`}var E$=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function I$(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${k({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var W$={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function H$(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(W$);return r`${k({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:N$(e)})}
    <div class="row">${n.map(s=>j$(t,s))}</div>`}function j$(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function N$(t){if(!(!t||a.is_old))return`It now makes a strength of ${x(t.lye_strength_percent,1)} %; ${x(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${x(t.water_percent_of_fats,1)} % of the fats.`}function Ve(t,e,n){let o=U$(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${q$(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Bp(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>J$(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function U$(t,e){let n=gt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Oa={name:"",share:""},z$={unsaid:void 0,one:"",many:[Oa]};function q$(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=l=>l==="many"&&o?[{...Oa,name:o}]:z$[l];return r`${k({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Bp(t,e,"INCI name","One more INCI name")}`:u}`}function J$(t,e,n){return k({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Bp(t,e,n,o,i){let s={of:t,at:e};return r`${S(s).map((l,d)=>r`<div class="row named" id=${U(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${Z(s,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${K(s,o,()=>V(s,Oa,n))}`}var V$=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:iw},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Q$},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:X$},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:tw}];function Fa(t){return V$.map(e=>{let n={of:t,at:`/${e.list}`},o=S(n),i=(s,l)=>r`<li class="formula-row" id=${U(n,l)}>
        ${G$(t,e,n,s,l)} ${e.row(t,`${n.at}/${l}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${K(n,e.add,()=>V(n,K$(e),e.add.replace("Add ","")))}
    </section>`})}function K$(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function G$(t,e,n,o,i){let s=`/${e.list}/${i}`,l=vt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:xs(t,`${s}/rate`,"How much",ks)}
      ${Z(n,i,d)}
    </div>`}function Ep(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return k({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function Ip(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${Ep(t,e,Z$,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?k({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:Y$,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Y$=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Z$=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Ca(t,e,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${xs(t,`${e}/limit`,"The most that the supplier's document allows",Mp,!0)}`})}function La(t,e,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Rp(t,e)} ${o?Ta(t,e):u}`})}var As=(t,e,n)=>Ve(t,e,String(n.name||"it"));function Q$(t,e,n){return r`${Ip(t,e,!0)}
    <div class="folds">${La(t,e,n,!0)} ${Ca(t,e,n)} ${As(t,e,n)}</div>`}function Wp(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Ip(t,e,!1)})}function X$(t,e,n){return r`<div class="folds">
    ${Ca(t,e,n)} ${As(t,e,n)} ${Wp(t,e,n)} ${La(t,e,n,!1)}
  </div>`}function tw(t,e,n){return r`${nw(t,e)}
    <div class="folds">
      ${Ca(t,e,n)} ${As(t,e,n)} ${Wp(t,e,n)} ${La(t,e,n,!0)}
    </div>`}var ew=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function nw(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${k({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${xt({label:"Which oil",of:t,at:`${n}/fat`,answers:vs(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${k({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:ew,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var ow=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function iw(t,e,n){let o=(i,s,l)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:l});return r`${rw(t,e,n)}
    ${Ep(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${lw(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>sw(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Ta(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${As(t,e,n)}
    </div>`}function sw(t,e){let n=g(t,e)===!0?"ice":"liquid";return k({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function rw(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...X(t,e,["replaces","rate"]),[s]:""});return r`${k({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:aw,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?xs(t,`${e}/rate`,"Rate",ks):u}`}var aw=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function lw(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${k({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${xa(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...vs(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${xt({label:"Built-in figures of",of:t,at:n,answers:ow.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var Ba=!1;function Hp(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!Ba&&dw(),{workings:uw(n?.workings,t),complaint:n?.complaint,is_old:o}}function uw(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function dw(){let{plan:t,planned:e}=a;if(!(!t||!e)){Ba=!0;try{let{how:n}=await lu(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{Ba=!1}}}function A({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:l,term:d}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>ce("open",t)}
    >
      <span class="name">${e}${l?r`<small>${l}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${Te(d)}${se(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?jp(i):Ea(o)}</div>`:u}
  </div>`}var bn=(t,e,n)=>A({key:t,label:e,shown:["",""],of:n});function Ea(t){let{workings:e,complaint:n,is_old:o}=Hp(t);return e.length?r`<div class=${o?"old":""}>${e.map(jp)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function jp({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
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
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var yn="/pipe/beads",Pe=`${yn}/tip`,cw={of:"run",at:Pe},$e={at:`${yn}/moves`,in_order:!0},Ia="\0own",qp={tip:"",bead_to_opening:"",moves:[]},re=(t,e)=>({name:t,label:e,kind:"length"}),Np={name:"count",label:"How many",kind:"count"},Up=re("circle_radius","Radius of their circle"),Wa={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[re("diameter","Diameter"),re("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[re("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},re("start_radius","Radius at the start"),re("end_radius","Radius at the end"),re("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[re("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Np,Up,re("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Np,Up,re("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[re("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Jp(t){return r`${mw()} ${Ha()?Yp(cw):gw()}
    ${f({label:"Bead \xF7 tip opening",at:`${yn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S($e).map((e,n)=>vw(e,n,t))}</div>
    ${Tw()}`}var Ha=()=>typeof g("run",Pe)=="object",Vp=()=>String(g("run",`${yn}/own_tips`)??g("studio","/own_tips")??"");function pw(){let t=Vp(),e=t?ia(t):[];return g("run",`${yn}/own_tips`)===void 0?[...e,...oa()]:e}function mw(){let t=n=>n===Ia?L("run","a tip of your own",Pe,{name:"",round:{radius:""}},Gp):W("run",Pe,n),e=pw().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${xt({label:"Tip",at:Pe,answers:[...e,[Ia,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Ha()?Ia:void 0})}
  ${Ha()?u:P({name:"tips",pointers:[`${yn}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${yn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var Kp=Je("run",Pe,"own"),Gp=oi(Kp);async function fw(){let t=g("run",Pe);if(!await Lr())return;let e=gt("own_tips","/tips"),n=hw(String(t.name).trim()||"My tip",e);Bn([["own_tips",o=>C(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>C(o,Pe,n)]]),E(`${n} kept in ${a.beside.own_tips.file}`)}function hw(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...oa()].some(i=>i.name===o))return o}}function gw(){let t=F("run",Pe),e=Vp();if(!t||!e||!ia(e).some(o=>o.name===t))return u;let n=gt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{Lr()}}>Change this tip of my own</button>`:Yp({of:"own_tips",at:`/tips/${n}`})}var zp=[["round","Round"],["star","Star"],["outline","Another outline"]],Ps={x:"",y:""},_w={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Ps,Ps,Ps]};function Yp({of:t,at:e}){let n=zp.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...X(t,e,n),[s]:_w[s]});return r`<div class="part" id=${Kp} role="group" aria-label="My own tip">
    ${I(t,e)} ${$w({of:t,at:e})}
    ${k({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:zp,puts:i})}
    ${o?bw({of:t,at:e},o):u}
    ${P({of:t,name:"hand",pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>ww({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{fw()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var $w=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${F(t,`${e}/name`)}</p>`;function ww({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>L(t,"correction removed",n,void 0,Gp)}>
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function bw(t,e){if(e==="outline")return yw(t);let{of:n,at:o}=t,i=(s,l)=>f({of:n,label:l,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function yw({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(n).map((o,i)=>r`<div class="row" id=${U(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${Z(n,i,`corner ${i+1}`)}
        </div>`)}
    ${K(n,"One more corner",()=>V(n,Ps,"corner"))}`}function vw(t,e,n){let o=Wa[String(t.move)],i=`${$e.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${U($e,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${Z($e,e,s)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>kw(i,l))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${xw(e,n)}
  </div>`}function kw(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:l,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function xw(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==S($e).length)return u;let i=o.length_mm>0?`${x(o.length_mm/10,1)} cm of bead`:"";return A({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:_t(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Tw(){let t=o=>({move:o,...Object.fromEntries(Wa[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=st("run",$e.at),n=vt("run",$e.at);return S($e).length||It("run",$e.at,e,"What the tip does"),r`${Wt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Wa).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>V($e,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var Tt=()=>a.beside.studio!==void 0,li=({run:t})=>g("run",t),ja=({studio:t})=>g("studio",t);function ui(t){return li(t)===void 0&&Tt()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var vn=t=>li(t)??ja(t),Rt=(t,e)=>f({...e,...ui(t)}),Na=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function di(t,e=""){return t===void 0||Na(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>di(o,`${e}/${At(n)}`))}function Rw(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Na($(t,n))&&(t=C(t,n,void 0));return t}var Qp=(t,e)=>e.reduce((n,o)=>Rw(C(n,o,void 0),o),t);function Xp(t){let e=new Map;return t.flatMap(n=>di(li(n)).flatMap(([o,i])=>{let s=n.studio+o,l=e.get(s)??g("studio",s);return Na(l)||String(l).startsWith("?")||l===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Ua(t){Tt()||await xd();let e=Xp(t);Bn([["studio",n=>e.reduce((o,[,i,s])=>C(o,i,s),n)],["run",n=>Qp(n,e.map(([o])=>o))]]),E("Kept in the studio")}function Sw(t){let e=t.flatMap(o=>di(ja(o)).map(([i,s])=>[o.run+i,s]));Bn([["run",o=>e.reduce((i,[s,l])=>$(i,s)===void 0?C(i,s,l):i,o)]]),E("Said in this run only")}function Aw(t){let e=t.flatMap(n=>di(li(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Bn([["run",n=>Qp(n,e)]]),E("Taken from the studio again")}var Zp=t=>di(t).length>0;function lo(t,e){if(!Tt())return u;let n=e.some(s=>Zp(li(s))),o=e.some(s=>Zp(ja(s))),i=(s,l)=>r`<button type="button" aria-label="${t}: ${s}" @click=${l}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Xp(e).length?i("Keep in my studio",()=>{Ua(e)}):u}
    ${n&&o?i("As in the studio",()=>Aw(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>Sw(e)):u}
  </span>`}function za(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return e.find(o=>Ot(o,n)===Ot(t,n))??t}var ci=()=>Object.keys(g("studio","/cups")??{}),pi=()=>ci().length===1?{net:""}:ci().length?{cup:"",net:""}:{holds:"",net:""},tm="\0another";function mi(t,e="Cup holds"){let n=`${t}/holds`,o=ci();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?Pw(t):u}`;let i=l=>l===tm?L("run","Another cup",t,{...qa(t),holds:""},mt("run",n)):L("run",`Cup: ${l}`,t,{...qa(t),cup:l}),s=l=>F("studio",`/cups/${At(l)}`);return xt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(l=>[l,`${l}, ${s(l)}`]),[tm,"Another cup"]],unsaid:"choose ...",chosen:F("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function qa(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var Pw=t=>r`<button type="button" @click=${()=>L("run","A cup of the studio",t,qa(t))}>
    A cup of my studio
  </button>`;function nm(){return Tt()?r`<div class="row">
    ${ci().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${At(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Dw()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Dw(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||em();e.value="",L("studio",`${n} added`,`/cups/${At(n)}`,"",mt("studio",`/cups/${At(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${em()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function em(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!ci().includes(e))return e}}var Mw=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Ja=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function Ds(t){let{run:e}=Ja(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${Tt()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${lo("How warm",[Ja(t)])} ${I("run",e)} ${Ow(t)}`})}function Ow(t){let{run:e,studio:n}=Ja(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Rt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${xt({label:"The lye cools in",...ui(l),answers:Mw,unsaid:"not given",optional:!0})}
  </div>`}var Ht=()=>$(a.run.now,"/pipe")!==void 0;function om(){let t=e=>{let n=C(e,"/pipe",{formula:"",fills_headspace:"",whip:pi()});return Tt()?n:C(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ut("set-up pipe"),so("run","Topping added",t,N("lane-pipe"))}function Fw(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:C(o,i,void 0),t)}function Cw(){so("run","Topping removed",Fw,N("topping-back"))}function im(){let t=a.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||Ht()?u:r`<button type="button" id="topping-back" @click=${Ki}>Bring the topping back</button>`}function Va(){return r`${jw()} ${Ds("pipe")}
    <p class="choice"><button type="button" @click=${Cw}>Take the topping away</button></p>`}var Lw=["trials","beads","envelope"];function Ka(t){return Lw.every(e=>g("run",`/pipe/${e}`)===void 0)&&It("run","/pipe",`${st("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Ae({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:pi()},body:Bw})}
      ${Ae({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Ew})}
    </div>
    ${Ae({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:qp,body:()=>Jp(t)})}
    ${t?Ww(t):u}`}function Bw(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${U(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Z(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${K(t,"One more trial",()=>V(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${mi("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function Ew(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${k({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Iw={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Ww(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},l)=>A({key:`pipe.by.${i}`,label:Iw[i],note:o(l),shown:_t(a.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${Hw(t)}`}function Hw(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=x(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(a.run.now,`${o}/correction`)!==e.correction,l=()=>L("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Ga(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${mi("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function jw(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Ae({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Nw(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Ms(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,Nw(t,e))}>It is really so: keep it</button>`:u}var Os=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function Fs(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${H(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var sm=t=>[...a.files?.runs??[],...a.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Cs(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${ti(e.map(sm))}.</p>`:u}function Ls(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${ti(e.map(sm))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}function Uw({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,d=l-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>M`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",qo(e,l))}${p("side",qo(t.loops))}
    </svg>
  </div>`}function uo(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${Uw(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${T(_t(a.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${T(_t(a.units,i.total_ml))} together`:u},
      ${T(pt(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${T(_t(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(l=>r`<li>${l.text}</li>`)}
          </ul>`:u}`}var zw={mm:"in",g:"oz","\xB0C":"\xB0F"},qw={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Bs(t,e,n=""){let o=Ya(t);if(o)return o.unit??"";let i=_e($(D(),t));return qw[e]?.test(i)?i:n||(a.units==="us"?zw[e]??e:e)}var Es=()=>h({typed:void 0}),co=t=>`d${t.replaceAll("/","-")}`,Ya=t=>a.typed?.key===co(t)?a.typed:void 0,Is=t=>Ya(t)?.text??String($(D(),t)??"");function Ke(t){let{complaint:e}=B();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function Za(t,e,n,o){let{pointer:i}=t,s=l=>{let d=l.target.value,c=t.unit?Bs(i,t.unit,t.unit_before):"";h({typed:{key:co(i),text:d,unit:c}}),dt(i,Jw(t,d,c))};return r`<input
    id=${co(i)}
    .value=${H(Is(i))}
    @input=${s}
    @blur=${Es}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Ke(i)?"true":"false"}
  />`}function Jw(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Qn(e)?`${e.trim()} ${n}`:e}function jt(t,e){let n=co(t.pointer),o=Ke(t.pointer),i=Vw(t.pointer)??t.hint,s=t.unit?` (${Bs(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${Za(t,o||i?`${n}-said`:void 0,e)}
    ${Wt(n,o,i)}
  </div>`}function Vw(t){let e=$(D(),t),n=Ya(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function Ws(t){let e=t.toLowerCase(),{file:n,shipped:o}=B().open,i=o?"":n;return a.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function fi(t){let{open:e}=B();try{if(await me(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Tn()})}catch(n){if(!(n instanceof v))throw n;return pa(n)}a.run.file&&(ie(),Y()),t(e.file)}var De="/shape/points",rm=500,Ge=(t,e)=>[De,t,...e?[e]:[]].join("/"),am=t=>Array.from({length:t.least},()=>({}));function lm(t){let e=Et(D(),De),n=Gw(),{complaint:o}=B(),i=o?.field===De&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${Bs(Ge(-1,s.name),s.unit,um(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,l)=>Kw(t,l,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=rm} @click=${()=>js(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function Kw(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=Yw(e),s=l=>{let{name:d,label:c,unit:p}=t.columns[l],m={label:c,pointer:Ge(e,d),unit:p,unit_before:um(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return Za(m,i?`point-${e}-said`:void 0,Zw(t,e,l),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>js(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>dm(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function Gw(){let t=[...Fo(D()),...Wi(D())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function Yw(t){let{complaint:e}=B();return Ke(Ge(t))??(e?.about===Ge(t)?e.line:void 0)}function um(t,e,n){let o=(i,s)=>_e($(D(),Ge(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function Hs(t,e){queueMicrotask(()=>document.getElementById(co(Ge(t,e)))?.focus())}function js(t,e){let n=[...Et(D(),De)];n.length>=rm||(n.splice(e,0,{}),Es(),dt(De,n),Hs(e,t.columns[0].name))}function dm(t,e,n=0){let o=Et(D(),De).filter((i,s)=>s!==e);Es(),dt(De,o.length?o:[{}]),Hs(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function Zw(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let l=!Is(Ge(e,o))&&!Is(Ge(e,i));if(s.key==="Enter"&&s.shiftKey)js(t,e+1);else if(s.key==="Enter"&&n===0)Hs(e,i);else if(s.key==="Enter"&&e+1<Et(D(),De).length)Hs(e+1,o);else if(s.key==="Enter")js(t,e+1);else if(s.key==="Backspace"&&l&&Et(D(),De).length>1)dm(t,e,e>0?1:0);else return;s.preventDefault()}}var Qa={weighings:[""]},Xa=/\.(3mf|gltf|glb)$/i;function Ns(t){let e=Be(t);return e?{kind:t,points:am(e)}:{kind:t}}var Qw=()=>dt("/water",Qa),we=t=>Xt(D(),t),hi=()=>Oo(D());function cm(t){let{open:e,answer:n,is_old:o}=B();return r`${to(e,()=>{fi(t)})} ${eo(e)}
    ${e.shipped?u:Ls(a.files?.moulds.find(i=>i.file===e.file))}
    ${we("shape")&&we("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${we("shape")?rt("Shape",hi(),Object.entries(Vu),Xw):u}
    <div class="beside ${Be(hi())?"rows":""}">
      <div>
        ${tl()} ${we("shape")?eb():u} ${we("mesh")?nb():u}
        ${el()} ${we("water")?ib():u} ${rb()}
      </div>
      <div class="stays">${uo(n,o,mm())} ${ab(t)}</div>
    </div>`}function Xw(t){let e={...B().shapes,[hi()]:D().shape};y(B(),{shapes:e,answer:void 0}),dt("/shape",e[t]??Ns(t))}function tb(){let{shipped:t,file:e}=B().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function tl(){let t=tb();return jt({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function eb(){let t=hi(),e=Be(t);return r`${Dn(t).length?r`<div class="row">
          ${Dn(t).map(n=>jt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?lm(e):u}`}function el(t=Tr(D())){return r`<div class="row">
      ${t?u:jt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${jt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${jt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${jt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var nl=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],ol=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function nb(){let t=o=>String($(D(),`/mesh/${o}`)??""),e=(o,i,s)=>{let l=Ke(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${rt(o,t(i),s,d=>dt(`/mesh/${i}`,d||void 0))}
      ${l?r`<p class="complaint">${l}</p>`:u}`},n=Ke("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${Xa.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",nl)} ${e("Which way is up","up",ol)}
    ${t("role")==="body"?ob():u}
    <div class="row">
      ${jt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${jt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function ob(){let t=$(D(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${rt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>dt("/mesh/on_board",e==="yes"?!0:void 0))}`}function ib(){let t=$(D(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>dt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(D(),"/water/weighed_in"),i=e===void 0||e==="brim"?Ke("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${jt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${rt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?jt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?jt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${rt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>dt("/water/weighed_in",s))}
    <div class="row">
      ${Et(D(),"/water/weighings").map((s,l)=>jt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},sb(l)))}
    </div>
    ${B().complaint?.field==="/water/weighings"?r`<p class="complaint">${B().complaint.line}</p>`:u}
    <button type="button" @click=${pm}>One more round</button>`}function pm(){let t=Et(D(),"/water/weighings").length;dt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var sb=t=>e=>{e.key==="Enter"&&(t+1===Et(D(),"/water/weighings").length?pm():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function rb(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${we("shape")?u:t("Add measures, as a check",()=>dt("/shape",Ns("block")))}
    ${we("shape")&&we("mesh")?t("Leave the measures out",()=>dt("/shape",void 0)):u}
    ${we("water")?t("Leave the water out",()=>dt("/water",void 0)):t("Add weighed water",Qw)}
  </div>`}function mm(){let t=Wi(D()).length;return t?[...Co(D()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Co(D())}function ab(t){let e=String(D().name??"").trim(),n=Ws(e),{open:o,answer:i,is_old:s,complaint:l}=B(),d=i&&!s&&!l&&!mm().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{fi(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${il(e,n)}
    ${l?r`<p class="alarm" role="status">${lb(l.field)}${l.line}</p>
            ${Ms(D(),l.keep,dt)}`:u}`}var il=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function lb(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Dn(hi()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var ub=200*2**20;async function fm(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),dt("/name",t.name.replace(/\.\w+$/,"")),t.size>ub){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await fu(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await gm(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function gm(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let l=await Jn({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof v))throw l;if(e!==t.questions)return;let d=o?t.sizes:mb(l.complaint),c=d.length&&!o?void 0:Q(l.complaint);y(t,{sizes:d,complaint:c,is_measuring:!1})}}async function db(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await uu({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:Q(s.complaint)})}}function cb(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(pb)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{db(t)}}>List every defect of the mesh</button>`}var pb=({text:t})=>r`<li>${t}</li>`;function mb({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>x(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function sl(t,e){y(t,e),gm(t)}function _m(t,e){let n=l=>{let d=l.target;fm(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),fm(l.dataTransfer?.files[0])},[i,s]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${a.mesh?fb(a.mesh,t,e):u}`}function fb(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,l])=>[s,l?`${s}: ${l} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!Xa.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${rt("Unit of the file's numbers",t.unit,i,s=>sl(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?cb(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${rt("Role",t.role??t.answer?.gauge.role,nl,s=>sl(t,{role:s}))}
            <h4>Which way is up</h4>
            ${rt("Up",t.up??"",ol,s=>sl(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${uo(t.answer)} ${hb(t,e,n)}`:u}`}var $m=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function hb(t,e,n){let o=String(D().name??"").trim(),i=Ws(o),s=o&&!i&&!t.is_keeping;return r`${tl()} ${el($m(t))} ${il(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>hm(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>hm(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function hm(t,e,n){y(t,{is_keeping:!0});try{let o=gb(t,await hu(t.upload,$b(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await _b(o))return e(o);Kn(o,"mesh",B().title),await fi(n),y(t,{complaint:a.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function gb(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=D();return{...i,...$m(t)||o===void 0?{}:{cavities:o},mesh:n}}async function _b(t){try{return await Oe({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var $b=t=>Pn(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Us={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},wm={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function bm(t){fe();let e={...wm,shape:Ns("block")};t==="mesh"?Kn(wm,"mesh",Us[t]):Kn(t==="water"?{...e,water:Qa}:e,"form",Us[t]),qs()}async function ym(t,e){fe(),await Nc(t,e),qs()}async function zs(t){fe(),await Uc(t),qs()}function wb(t){Kn(t,"form","More about this mould"),qs()}function qs(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function vm(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?_m(t,wb):cm(t)}
  </section>`}var rl=()=>h({chosen_mould:void 0});function gi(t,e){let n=a.files?.moulds.find(s=>s.file===t),o=a.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",told:e};h({chosen_mould:i}),bb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function bb(t){try{y(t,{answer:await Jn({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var yb=t=>a.files?.moulds.find(e=>e.file===t);function km(t,e){let n=()=>e(async()=>{await ym(t.file,t.shipped),rl()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Cs(yb(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?uo(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:vb(t,e)}
    </div>
  </section>`}function vb(t,e){let n=Os(t.sell),o=i=>()=>e(()=>as({mould:t.file,name:t.name,formula:i,sell:n}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${Fs("mould-sell",t.sell,i=>y(t,{sell:i}))}
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(i=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${o(i.file)}>
              <b>${i.name}</b><span>${i.note||i.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function _i(){let{view:t,run:e,formula_of:n,formulas:o,mould:i,chosen_mould:s}=a;if(t!=="reading")return be(t)?{name:t,file:e.file,of:e}:t==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:t==="moulds"&&s?{name:"chosen",file:s.file,of:s}:t!=="formula"?{name:t}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:Ro[n],file:e.file,of:e}}async function Tm({name:t,file:e}){if(!(!(t===Ro.apart&&a.formulas.apart?.file===e)&&!await ls()))try{await kb(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function kb(t,e=""){let n=t;if(be(n))return xm(e,n);let o=["pour","pipe"].find(i=>Ro[i]===t);if(o)return await xm(e,"formula"),qt(o);if(t===Ro.apart)return Zo(e);await xb(t,e)}async function xm(t,e){t===a.run.file||!t?h({view:a.run.file?e:"runs",typed:void 0}):await Ne(t,e)}async function xb(t,e){let n=t;rl(),fe(),h({view:Zt(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=qi(Dt).find(i=>i.id===e);t==="describing"&&o&&await zs(o),t==="chosen"&&gi(e),Tb()}async function Tb(){try{h({files:await Tn()}),ss()}catch(t){if(!(t instanceof v))throw t;h({list_complaint:t.message})}}var Nt={id:""},kt,al=!1,ul=new Map,Js=JSON.parse(sessionStorage.getItem("left")??"{}");function Sm(){let t=_i();al||!t||kt&&le(kt)===le(t)||(Vs(),Am(t))}function Am(t){let e=!kt||kt.name===t.name&&kt.of!==void 0&&kt.of===t.of;if(kt=t,e)return po();Nt={id:crypto.randomUUID(),before:location.hash},ul.set(Nt.id,t.of),history.pushState(Nt,"",le(t)),requestAnimationFrame(Sb)}function po(){kt&&(Nt.id||(Nt={id:crypto.randomUUID()}),ul.set(Nt.id,kt.of),history.replaceState(Nt,"",le(kt)))}var Rb="button, input, select, summary, a[href], [tabindex]",ll=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Pm=t=>[...document.querySelectorAll(`#main :is(${Rb})`)].filter(e=>ll(e)===t);function Vs(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Js[Nt.id]={scroll:scrollY}:Js[Nt.id]={scroll:scrollY,words:ll(t),nth:Pm(ll(t)).indexOf(t)}}function Sb(){scrollTo(0,0),document.activeElement?.closest("#main")||Dm()}function Dm(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Mm(){let{scroll:t,words:e,nth:n=0}=Js[Nt.id]??{scroll:0},o=e===void 0?void 0:Pm(e)[n];o?o.focus({preventScroll:!0}):Dm(),scrollTo(0,t)}var Ks=t=>Om({name:t,file:be(t)?a.run.file:void 0});async function Om(t){Vs(),await dl(t,()=>{let e=_i();e&&!(kt&&le(kt)===le(e))&&Am(e)})}async function dl(t,e){al=!0;try{await Tm(t)}finally{al=!1,e()}}function Fm(t){Nt.before===le(t)?history.back():Om(t)}var Rm=Promise.resolve();function Ab(t,e){Vs();let n=()=>history.state?.id!==t?.id;Rm=Rm.then(async()=>{if(!e)return po();if(n())return;let o=t?ul.get(t.id):void 0,i=[a.run,a.formulas.apart].find(s=>s&&s===o);await dl(i?{...e,file:i.file}:e,()=>{kt=_i(),!n()&&(Nt=t??{id:crypto.randomUUID()},po(),requestAnimationFrame(Mm))})})}function Cm(){history.scrollRestoration="manual",addEventListener("popstate",t=>{tu()||Ab(t.state,lr(location.hash))}),addEventListener("pagehide",()=>{Vs(),sessionStorage.setItem("left",JSON.stringify(Js))})}async function Lm(){let t=lr(location.hash);t&&(Nt=history.state??{id:""}),await Cc($u(t)),t&&Pb(t)&&await dl(t,()=>{kt=_i(),po(),requestAnimationFrame(Mm)}),await Lc()}var Pb=t=>!kt||le(kt)===le(t);function mo(t=a.plan?"The figures below are out of date.":"No figures yet."){let e=Ss()?void 0:a.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${cl(e.field)}${Q(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${pl}>Ask again</button>`:u}
              ${Se("run")?Ms(a.run.now,e.keep,(n,o)=>W("run",n,o)):u}
              ${Db()?r`<button type="button" @click=${Ob}>Go to the field</button>`:u}`:u}
    </div>
    ${ai()}`}function cl(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function pl(){Y(),a.run.failed&&ne()}function Db(){if(Bm())return!0;let t=wn();return t?document.activeElement!==t:Mb()}var Mb=()=>a.view!=="set-up"&&Se("run")&&a.complaint!==void 0&&a.complaint.field!=="",Bm=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&Se(t));function Ob(){let t=wn(),e=Bm();if(t)return bs(t);e?qt(e):Ks("set-up"),Fb(()=>bs(wn()))}function Fb(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Em=()=>[...ts().map(t=>to(t)),...Xi().map(eo)];function Im(){let t=a.formula_of,e=a.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Em()}${mo()}
      <p>Reading the formula ...</p>
      ${fl(t)}`;let n=a.plan&&Gn(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Em()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Cb(t)}</p>
    <div class="choice">${fl(t)}${t==="apart"?Lb():u}</div>
    ${Ls(a.files?.formulas.find(i=>i.file===e.file))} ${Bb(t,o,n)} ${Hm(t)}
    ${Da(t)} ${Ma(t,o)} ${Fa(t)} ${ka(t)}
    <div class="choice">${fl(t)}</div>`}var Wm=t=>[Hm(t),Da(t),Ma(t,void 0),Fa(t),ka(t)],ml=()=>String(a.run.now.name??a.run.file);function Cb(t){let e=a.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${ml()}".${n}`:o?`Base and topping of "${ml()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${ml()}".${n}`}function fl(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Fm(e?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function Lb(){return r`<button type="button" @click=${()=>{sa("pour")}}>Use it as the base</button> ${Ht()?r`<button type="button" @click=${()=>{sa("pipe")}}>Use it as the topping</button>`:u}`}function Bb(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...Eb(t,n),...Ib(t,e)].map(([o,i,s])=>r`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${s?Yn(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Wb(t)}
  </section>`}function Eb(t,e){let n=t==="pipe"?fa(e,e.whippings[0]):"";return n?[["For one whipping",n]]:bt(e.whole)?[["For one batch",he(e.whole,e.batch)]]:[]}function Ib(t,e){let n=Ue(t).length?" \u26A0":"";return[["Fats",T(O(a.units,e.fats_g))],["Superfat as weighed",`${Jt(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...hs(e).map(({one:o})=>[o.name,T(_n(a.units,o))])]}function Wb(t){let e=Ss()?void 0:a.complaint;if(!e)return r`<div role="status"></div>
      ${ai()}`;let n=Se(t),o=n&&e.field!==""&&document.activeElement!==wn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${cl(e.field)}${Q(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${pl}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>wn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${ai()}`}function Hm(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var jm=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Gs=gs(class extends no{constructor(t){if(super(t),t.type!==Re.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],l=0;for(let d of t)i[l]=o?o(d,l):l,s[l]=n(d,l),l++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=fp(t),{values:s,keys:l}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=l,s;let d=this.ut??=[],c=[],p,m,_=0,w=i.length-1,b=0,R=s.length-1;for(;_<=w&&b<=R;)if(i[_]===null)_++;else if(i[w]===null)w--;else if(d[_]===l[b])c[b]=qe(i[_],s[b]),_++,b++;else if(d[w]===l[R])c[R]=qe(i[w],s[R]),w--,R--;else if(d[_]===l[R])c[R]=qe(i[_],s[R]),oo(t,c[R+1],i[_]),_++,R--;else if(d[w]===l[b])c[b]=qe(i[w],s[b]),oo(t,i[_],i[w]),w--,b++;else if(p===void 0&&(p=jm(l,b,R),m=jm(d,_,w)),p.has(d[_]))if(p.has(d[w])){let q=m.get(l[b]),Lt=q!==void 0?i[q]:null;if(Lt===null){let nn=oo(t,i[_]);qe(nn,s[b]),c[b]=nn}else c[b]=qe(Lt,s[b]),oo(t,i[_],Lt),i[q]=null;b++}else $s(i[w]),w--;else $s(i[_]),_++;for(;b<=R;){let q=oo(t,c[R+1]);qe(q,s[b]),c[b++]=q}for(;_<=w;){let q=i[_++];q!==null&&$s(q)}return this.ut=l,_s(t,c),St}});async function Ft(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await We().catch(()=>{})}}var hl=()=>{Ft(Pd)};function fo(t){return r`<h1 tabindex="-1">${t}</h1>
    ${a.list_complaint?r`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Io()?r`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${hl}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Nm=new Map,Um=Promise.resolve();function zm(t,e=""){let n=`${t}
${e}`,o=Nm.get(n);return o||(o=Um.then(()=>Hb(t)),Um=o,Nm.set(n,o)),o}async function Hb(t){try{let e=await Fe({kind:"glb",gauge:{file:t}}),n=qn(await e.arrayBuffer());return Jo(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var gl=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{zm(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void ue(u,this);let{left:n,right:o,floor:i,brim:s,loops:l}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];ue(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${qo(l)} />
      </svg>`,this)}};customElements.define("mould-picture",gl);var kn=(t,e)=>r`<ul class="cards">
    ${Gs(t,({file:n})=>n,e)}
  </ul>`;function ho(t){let{one:e,facts:n,picture:o,open:i}=t,s=a.list_open?.file===e.file?a.list_open:void 0,l=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{Ft(i)}}>
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
      @click=${()=>jb(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?Nb(t,s):u}
  </li>`}function jb({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Wo(n)}:void 0})}function Nb(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{Ft(()=>zb(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(d=>o[d]===e[d])&&Wo(o.file)===e.stem,l=()=>{Ft(()=>qb(t,e))};return r`<div class="acts">
    ${Cs(o)} ${_l("Name",e,"name")} ${_l("Note",e,"note")}
    ${_l("Name of the file",e,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!e.name.trim()||!e.stem.trim()}
        @click=${l}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{Ft(()=>qm(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Ub(o,e):u}
  </div>`}function _l(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${H(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Ub(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{Ft(()=>qm(t,e,!0))}}>Remove it even so</button>
  </div>`}async function zb(t,e){let n=await Dd(t,e),o=a.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Wo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function qb({kind:t,one:e},{name:n,note:o,stem:i}){await Fd(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function qm(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await Cd(t,n),h({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}var $l=t=>y(a.new_formula,t);function Jm(){let{name:t,copied:e}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>Ft(async()=>{await i(t.trim()),$l({name:"",copied:""})});return r`${fo("Formulas")}
    <section aria-label="Formulas">
      ${kn(n,Jb)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${H(t)}
            @input=${i=>$l({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Ec)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>$l({copied:i.target.value})}
          >
            <option value="" .selected=${H(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${H(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Ic(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function Jb(t){let e=t.changed?[`changed ${Xn(t.changed)}`]:[];return ho({kind:Mn,one:t,facts:e,open:()=>Zo(t.file)})}function Vb(t){fe(),gi(t,`Saved in ${t}.`)}function Vm(){let{chosen_mould:t}=a;return r`${fo("Moulds")}
  ${t?km(t,Ft):vm(Vb)??r`${Zb()} ${Kb()}`}`}function Kb(){let t=(a.files?.moulds??[]).filter(n=>!n.shipped),e=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${kn([...t,...e],Gb)}
  </section>`}function Gb(t){let e=t.shipped?Yb(t.file):ty(t.file),n=()=>Promise.resolve(gi(t.file));return ho({kind:Dt,one:t,facts:e,picture:t.file,open:n})}var Yb=t=>a.catalogue.filter(e=>e.path===t).map(e=>`${T(_t(a.units,e.brimful_ml))}, ${it(e.cavities,"cavity","cavities")}; ${e.description}`);function Zb(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${Qb()}
    <div class="choice">
      ${Object.entries(Us).map(([t,e])=>r`<button type="button" @click=${()=>bm(t)}>${e}</button>`)}
    </div>
  </section>`}function Qb(){return qi(Dt).map(t=>{let e=String(ot(t.text)?.name??"").trim()||Xb(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Ft(()=>zs(t))}>Continue</button>
        <button type="button" @click=${()=>{Ee(Dt,t.id),z()}}>Discard it</button>
      </div>
    </div>`})}var Xb=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function ty(t){let e=$c(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[T(_t(a.units,e.brimful_ml)),it(e.cavities,"cavity","cavities")]:["measuring ..."]}function Km(){let t=ey();if(t)return t;let{run:e}=a,n=a.formula_of==="apart"||!(j(e)||e.theirs||e.failed);return a.view==="formula"&&n?ny():e.theirs?Zm(e):e.failed?bl(`Not saved: ${e.failed}`):j(e)?Ym:wl(e.shipped?Gm:`Saved in ${e.file}`)}var Gm="Built-in example: your first change is saved as a copy.",Ym={words:"Saving ...",is_kept:!1},wl=t=>({words:t,is_kept:!0}),bl=t=>({words:t,is_kept:!1,is_failed:!0}),Zm=t=>bl(pn(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function ey(){let t=a.formulas.apart?"apart":"run",e=xe(t);if(e)return Zm(e);if((t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&j(o)))return a.complaint?.file===""?bl(`Not saved: ${a.complaint.problem}`):Ym}function ny(){let t=a.formulas[a.formula_of];return wl(t?t.shipped?Gm:`Saved in ${t.file}`:"")}function Ys(){let{view:t,mould:e,past:n,future:o}=a;return t==="moulds"&&e?Qm(e,zc,qc):Zt(t)?{undo:Io()&&hl}:Qm({past:n,future:o},Ki,$d)}var Qm=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var Xm={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},oy={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},iy="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",sy="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",yl=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${t} />`}</svg>`;function tf(){let t=a.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${gu.map(e=>ef(e,Xm[e],r`${Xm[e]}`))}
              </nav>
              ${ay()}`}
    </div>
    ${t?u:ly()}
  </header>`}var ry={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function ay(){let t=e=>()=>{h({units:e}),localStorage.setItem("units",e)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(e=>r`<button type="button" aria-pressed=${a.units===e?"true":"false"} @click=${t(e)}>
          ${ry[e]}
        </button>`)}
  </div>`}function ly(){let{undo:t,redo:e}=Ys();return r`<div class="bar">
    ${a.run.file?uy():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${yl(iy)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${yl(sy)}<span>Redo</span></button>
    </div>
    ${a.run.file?my():u}
  </div>`}function uy(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${_u.map(dy)}</div>
  </nav>`}function dy(t){let[e,n]=oy[t],o=cy(t);return ef(t,o?`${e}, ${o.words}`:e,r`${yl(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function cy(t){if(t==="watch"&&Yc())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&py())return{sign:"\u25CB",words:"missing"}}var py=()=>a.complaint!==void 0&&!a.complaint.is_fault;function ef(t,e,n){let o=a.view===t;return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{Ks(t)}}
  >
    ${n}
  </button>`}function my(){let{words:t,is_kept:e,is_failed:n}=Km();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}function of(t){if(!Xc(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=bt(e)?`${it(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${nf(t,"pour","The base, whole run")}
      ${e.pipe?nf(t,"pipe","The topping, whole run"):u} ${fy(t)}
    </div>
  </section>`}function nf(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...dp(i),...hs(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:l,i:d})=>Zs(`${e}.ingredients.${d}.g`,l.name,_n(a.units,l)))}
    ${Zs(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",O(a.units,i.make_g))}
  </div>`}var Zs=(t,e,n)=>A({key:`needs.${t}`,label:e,shown:n,of:t});function fy(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,l)=>s.colours.map((d,c)=>({layer:s,one:d,i:l,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>et(a.units,yt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:l,i:d,j:c})=>Zs(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${s.name}`,_n(a.units,l)))}
    ${o.map((s,l)=>Zs(`dust.${l}.g`,s.name,i(s)))}
  </div>`}function sf(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:l}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${A({key:"piece.fresh",label:c("Fresh"),shown:O(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:A({key:"piece.cured",label:c("Cured"),shown:O(a.units,o),of:"piece.cured_g"})}
      ${s?A({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:O(a.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:A({key:"piece.label",label:"Net weight for the label",shown:O(a.units,i,0),of:"piece.label_g"})}
      ${l?A({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>x(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${A({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${vl(t)}
    </section>
    ${of(Gn(t))}`}function vl(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[af,xl]=[440,270],[$i,kl,Qs,go]=[64,af-10,10,xl-52],hy=6,gy=8;function rf(t){let e=t/hy,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var _o=t=>x(t,1);function lf(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>_o($i+(kl-$i)*d/n),s=d=>_o(go-(go-Qs)*d/o),l=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${af} ${xl}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${rf(n).map(d=>M`<path class="grid" d="M${i(d)} ${Qs}V${go}" />
            <text x=${i(d)} y=${go+20} text-anchor="middle">${_o(d)}</text>`)}
      ${rf(o).map(d=>M`<path class="grid" d="M${$i} ${s(d)}H${kl}" />
            <text x=${$i-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${_o(d)}</text>`)}
      ${M`<text x=${($i+kl)/2} y=${xl-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Qs+go)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${Qs}V${go}" />`}
    </svg>
    ${_y(t)}`}function _y(t){let e=Math.max(1,Math.round(t.length/gy)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
              <th scope="row">${_o(o)}</th>
              <td>${_o(i)}</td>
              <td>${x(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Xs=Math.PI/8,$y=500,Tl=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#a||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},$y))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#a){try{let n=await Fe(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(qn(await n.arrayBuffer())),this.#a=e,this.#l=""}catch(n){if(!(n instanceof v))throw n;this.#l=n.message}this.#u()}}#_(e){e(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;ue(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Xs)}>Turn left</button>
        <button type="button" @click=${e(Xs)}>Turn right</button>
        <button type="button" @click=${n(Xs)}>From above</button>
        <button type="button" @click=${n(-Xs)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Tl);function uf(t){let{measured:e}=a;if(!e)return r`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${A({key:"mould.brimful",label:"To the brim",note:`${T(pt(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:_t(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${lf(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${wy(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function wy(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var $o=t=>y(a.printing,t);function df(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function cf(t){if(!a.printing.is_working){$o({is_working:!0,told:"Making it ..."});try{await by(),$o({told:await t()})}catch(e){$o({told:e instanceof Error?e.message:String(e)})}$o({is_working:!1})}}async function by(){await Wn();let t=xe("run");if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var Ye=(t,e)=>()=>cf(async()=>{let n=URL.createObjectURL(await Fe(e));return df(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),yy=t=>()=>cf(async()=>(df(await mu(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),vy=t=>{$o({paper:t}),localStorage.setItem("paper",t)},ky=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function pf(t){let{batch:e}=a.printing;return bt(t)&&e<=t.pieces.batches?e:0}function xy(t){if(!bt(t))return u;let e=pf(t),n=i=>$o({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${H(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${ky(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${he(t,s)}`))}
      </select>
    </div>
  </div>`}function mf(t){let{paper:e,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:a.run.file,run:a.run.now},l=a.measured?.mould,d={file:l,"below-brim":`${t.pour.below_brim_mm} mm`},c=pf(t),p={plan:s,paper:e,...c?{batch:String(c)}:{}},m=(_,w,b="")=>r`<button type="button" class=${b} ?disabled=${n} @click=${()=>{w()}}>${_}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${rt("Paper",e,[["A4","A4"],["Letter","Letter"]],vy)}
    ${xy(t)}
    <div class="choice">
      ${m("Bench sheet, to print",yy({kind:"sheet",...p}),"strong")}
      ${a.files?.makes_pdf?m("Bench sheet, PDF",Ye(`${i}${c?` batch ${c}`:""}.pdf`,{kind:"sheet-pdf",...p})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?m("Label draft",Ye(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",Ye(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",Ye(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",Ye(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",Ye(`${i}.stl`,{kind:"stl",plan:s}))}
      ${l?r`${m("Filled cavity, GLB (3D viewer)",Ye(`${i} cavity.glb`,{kind:"glb",gauge:d}))}
            ${m("Cavity, STL (3D printing)",Ye(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${T(pt(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var ff=t=>mf(t);var ft={at:"/decorations"},wo=t=>`${ft.at}/${t}`,Ze=t=>F("run",`${wo(t)}/name`).trim()||`Decoration ${t+1}`,Gt=()=>$(a.run.now,"/cut")!==void 0,tr=t=>["mould","rod","drizzle"].find(e=>g("run",`${t}/${e}`)!==void 0),wi=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var Ut="/batch",hf=t=>`${t}/moulds_owned`;function Rl(){return P({name:"batches",pointers:[Ut],summary:`Batches${Ty()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",Ut)}
        <div class="row">${Ry()} ${Ay()}</div>
        ${k({question:"Cavities at each filling",at:Ut,asked_at:`${Ut}/fill`,chosen:g("run",`${Ut}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>gf("fill",t==="full"?t:void 0)})}`})}function Ty(){let[t,e]=[`${Ut}/pieces`,`${Ut}/casts`].map(o=>F("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function gf(t,e){let n=X("run",Ut,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function Ry(){let t=g("run",`${Ut}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${Ut}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Gt()?g("run",`${Ut}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${Sy}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function Sy(){L("run","Counted in loaves",Ut,gf("pieces",void 0))}function Ay(){let t=`${Ut}/whippings`;return!Ht()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Py=500,Dy=()=>$(a.run.now,"/cut")===void 0&&My()>=Py,My=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0;function _f(t){ut("set-up cut"),L("run","Cut","/cut",{bar:Sl[t],kerf:""},mt("run",`/cut/bar/${Object.keys(Sl[t])[0]}`))}function Oy(){L("run","Left whole","/cut",void 0,N("cut-into-bars"))}function $f(){return Dy()?r`<button type="button" id="cut-into-bars" @click=${()=>_f("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>_f("slab")}>Cut it into bars</button>`:u}var Sl={loaf:{thickness:""},slab:{length:"",width:""}};function Fy(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var Cy={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function wf(){let t=Fy(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=F("run","/cut/along");return r` ${k({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Sl[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${f({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm.</p>
    ${t?k({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Cy[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${Oy}>Leave it whole</button>`}var Ly={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Yt={at:"/dust"},er=t=>F("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function bf(){ut("set-up dust"),V(Yt,{name:""},"Dust")}function By(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function yf(t){let e=`/dust/${t}`,n=By(e),o=er(t),i=s=>({...X("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...Ly[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${k({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Ve("run",e,o)}`}var Ey={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function Iy(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function vf(t,e){let n=Iy(t),o=i=>({...X("run",t,["on_top","buried"]),...Ey[i]});return tr(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${k({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Wy(`${t}/on_top`):n==="buried"?jy(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Wy(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${kf(t,"It is turned")}`}function kf(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var Hy=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function jy(t,e){let n=`${t}/buried`,o=e===S(ft).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${I("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${k({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${k({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:Hy,puts:l=>Uy(t,l)})}
  ${i==="said"?qy(t,e):u}`}var Ny=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${M`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,xf={x:"",y:"",height:""};function Uy(t,e){let n=X("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${wi(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>xf);return{...X("run",t,["per_piece","per_cast"]),[Tf(t)]:i.length,buried:{...n,places:i}}}var Tf=t=>Gt()?"per_cast":wi(t)??"per_piece";function zy(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,l)=>C(s,`${t}/${l}`,void 0),n);return C(i,`${t}/${Tf(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function qy(t,e){let n=zy(t),o=S(n);return r`${Ny()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let l=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${U(n,s)} role="group" aria-label="Place ${s+1} of ${Ze(e)}">
        ${I("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${Z(n,s,`place ${s+1} of ${Ze(e)}`)}
        </div>
        ${kf(l,`Place ${s+1} is turned`)}
      </div>`})}
    ${K(n,"Add a place",()=>V(n,xf,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Rf=t=>`${t} made`;function Jy(){let t=wo(S(ft).length),e=Gt()?{}:{per_piece:""};ut("set-up decorate");for(let n of[Rf(t),`${t} where`])ao("run",n);V(ft,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Sf(){let[t,e]=[S(ft).length>0,S(Yt).length>0];return r`${K(ft,t?"Add another decoration":"Add a decoration",Jy)}
  ${K(Yt,e?"Add another dust":"Add a dust",bf)}`}function Af(t){let e=wo(t);return r` ${I("run",e)} ${Yy(e)}
    <div class="row">
      ${Vy(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${f({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
      ${f({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
      ${f({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}
    </div>
    ${vf(e,t)} ${Ve("run",e,Ze(t))}`}function Vy(t){let e=wi(t),n=gt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Gt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Gt()?"In each loaf":"In each cast":Gt()?"On each bar":"On each piece",i=s=>({...X("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Gt()?k({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var Ky={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function Gy(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...e==="drizzle"?["on_top","buried"]:[]];return{...X("run",t,n),...Ky[e]}}function Yy(t){let e=tr(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:Rf(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${k({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>Gy(t,o)})}
        ${e?Zy[e](t):u}
        ${f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var Zy={mould:Qy,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function Qy(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${ro("Cast in",`${t}/mould`,a.files?.moulds)}
  ${k({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${k({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Pf(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!Ht()?u:r`<div class="labelled">
      ${va(t,"Make one pot of lye solution for both",e,{})}${Te("lye_solution")}
    </div>
    ${se("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Df(t){let e={at:"/bottles"},n=S(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&tt(t)?` Weights are of ${tt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${U(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${Z(e,i,l)}
            </div>
            ${I("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?Xy(t,i,l):u}
          </div>`})}
        ${K(e,"Use up a bottle",()=>V(e,{name:"",holds:""},"bottle"))}`})}function Xy(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>A({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${x(i.percent_of_batter,2)} % of the batter`,shown:et(a.units,yt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var bi="/label",Pl=()=>g("run",bi)!==void 0;function Mf(){let e=g("studio",bo.studio)!==void 0?{weight_spread:""}:{market:""};ut("set-up label"),L("run","Label added",bi,e,N("lane-label"))}function Of(){return r`${I("run",bi)} ${tv()}
    <button type="button" @click=${()=>L("run","Label removed",bi,void 0)}>Remove the label</button>`}var bo={run:"/label/market",studio:"/label/market"};function Dl(){let{of:t,at:e}=ui(bo);return r`${k({of:t,question:"Where it is sold",at:t==="run"?bi:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?ev(n):n})}
  ${lo("Where it is sold",[bo])}`}function tv(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${Dl()}
  ${k({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:nv})}
  ${t==="weighed"?ov():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${vn(bo)==="EU"||g("run",Al)!==void 0?va(Al,"With the e mark",g("run",Al)===!0,!0):u}`}var Al="/label/e_mark";function ev(t){return{...X("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function nv(t){let e=X("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function ov(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${U(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Z(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${K(t,"One more piece",()=>V(t,"","piece"))}`}function Ff(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${ma(t)?`${c.count} of `:""}${he(t,c)}`),l=`Made in ${e} batches${ma(t)?": ":" of "}${ti(s)}; ${cs(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${bt(t)?r`<p><b>${l}</b></p>`:u}
    ${i>0?r`<p>
            ${it(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var Cf=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Lf(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?Wf(i):0,l=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?iv(t,e,n,l):0;return{brim:n,line:o,topping:d,ball:s,proud:l,top:Math.max(n,(t.pipe?n:o)+d+l)}}function iv(t,e,n,o){let i=Zn($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[l,d]=ta(e,e.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*t.pipe.visible_each_ml/c}function Ml(t,e){let[n,o]=ta(t,t.brim-.01),i=(n+o)/2,s=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,w)=>{let b=i+w*(Math.max(l(m),l(_))+(o-n)*.035);return`C${b} ${d(m)} ${b} ${d(_)} ${i+w*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+l(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var yi=(t,e)=>t===e?`shaded ${e}`:"plain";function Qe(t,e,n=u){return r`${Bf(t,e,n)}
  ${t==="decorate"&&Ol(e)?r`<p class="hint">${Ol(e)}</p>`:u}`}var Xe=(t,e)=>r`<div class="small-view">${Bf(t,e,u)}</div>`;function Bf(t,e,n){let o=a.measured?.outline;if(!o)return r`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Lf(e,o),s=o.right-o.left,l=Math.max(6,s*.1),d={x:o.left-l,y:-i.top-l,w:s+2*l,h:i.top+2*l};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${fv(t,e)}>
      ${sv(t)} ${rv(t,e,o,i)} ${lv(t,e,o,i)} ${uv()}
      ${dv(t,e,o,i)} ${mv(t,e,o,i)}
      ${M`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Ef(t,e){let n=a.measured.outline,o=Lf(t,n),i=n.right-n.left,s=Math.max(6,i*.1),l=o.top+2*s;return{share:(o.top+s-e)/l,per_mm:1/l,w:i+2*s,h:l}}function sv(t){return M`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${Cf(If())} /></clipPath>
  </defs>`}function If(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function rv(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],l=(s.length?s.map(d=>av(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return M`<g clip-path="url(#cavity-${t})">${l.map((d,c)=>M`<path class="whole" d=${d} /><path class="${yi(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?M`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function av(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function lv(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,l=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${t})"><rect class=${yi(t,"pipe")} x=${l-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function uv(){return M`<path class="wall" fill-rule="evenodd" d=${Cf(If())} />`}function dv(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return M`
    ${e.pipe?M`<path class=${yi(t,"pipe")} d=${Ml(n,o)} />${t==="pipe"?M`<path fill="url(#dots-pipe)" d=${Ml(n,o)} />`:u}`:u}
    ${t==="dust"?cv(e,n,o):u}
    ${o.ball?M`<circle class=${yi(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>pv(yi(t,"decorate"),i,d,c,p))}`}function cv(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return M`<path class="powder" d=${t.pipe?Ml(e,n):o} />`}function pv(t,e,n,o,i){let[s,l]=[e+n.middle_mm[0],n.middle_mm[2]],d=Zn($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Zn($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return M`<circle class=${t} cx=${s} cy=${-l} r=${Wf(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),w=d/2*Math.sqrt(1-_*_),b=c*_+2*w,R=-180/Math.PI*Math.atan2(m,p);return M`<rect class=${t} x=${-b/2} y=${-d/2} width=${b} height=${d} rx=${w} ry=${w?d/2:0}
    transform="translate(${s} ${-l}) rotate(${R})" />`}var Wf=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Ol(t){let e=(t.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function mv(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return M`${Array.from({length:i-1},(s,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return M`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function fv(t,e){let n=T(pt(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Ol(e)}`.trim()}var hv=t=>`set-up ${t}`;function Ct({name:t,title:e,drawing:n,result:o,about:i,form:s}){let l=hv(t),d=()=>Vt({part:e,fold:l},s);if(ni())return r`${d()}`;i.some(([m,_])=>Kt(m,_))&&ut(l);let c=a.open.has(l),p=io().filter(({folds:m})=>m.includes(l)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
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
        @click=${()=>ce("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var at=t=>r`<p class="order ${a.is_old&&a.plan?"old":""}">${t}</p>`;var Hf=()=>S(ft).length>0,jf=()=>S(Yt).length>0;function Nf(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function Uf(t){let e=t?S(ft).flatMap((n,o)=>Jf(t,o)??[]):[];return Ct({name:"decorate",title:"Decorate",drawing:t&&(()=>Xe("decorate",t)),result:e.length?e.map(n=>_v(t,n)):at(zf(ft,Ze)),about:[["run",ft.at]],form:()=>r`${t?r`<div class="side">${Qe("decorate",t)}</div>`:u}
        <div class="weights">${t?S(ft).map((n,o)=>gv(t,o)):u}</div>
        ${Vf(ft,Ze,Af)}`})}var zf=(t,e)=>`${S(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function gv(t,e){let n=Jf(t,e);return n?$v(t,n,e):u}function qf(t){let e=t?.dust?.length?S(Yt).map((n,o)=>bv(t,o)):void 0;return Ct({name:"dust",title:"Dust",drawing:t&&(()=>Xe("dust",t)),result:e??at(zf(Yt,er)),about:[["run",Yt.at]],form:()=>r`<div class="side">${t?Qe("dust",t):u}</div>
        <div class="weights">${t?S(Yt).map((n,o)=>yv(t,o)):u}</div>
        ${Vf(Yt,er,yf)}`})}var Jf=(t,e)=>Nf(t.decorations,S(ft),F("run",`/decorations/${e}/name`),e);function Vf(t,e,n){return r`<div class="all-questions">
    ${S(t).map((o,i)=>r`<section class="questions" id=${U(t,i)} aria-labelledby="${U(t,i)}-title">
          <div class="part-head">
            <h3 id="${U(t,i)}-title">${e(i)}</h3>
            ${Z(t,i,e(i))}
          </div>
          ${Vt({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function _v(t,e){let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=T(et(a.units,yt(e,"make_")));return at(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${bt(t.whole)?", for the whole run":""}.`)}function $v(t,e,n){return r`<h3>${e.name} ${bt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${A({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:et(a.units,yt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${A({key:`decorations.${n}.each`,label:"Each weighs",note:`${x(e.volume_each_ml,2)} ml`,shown:O(a.units,e.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${ze(e.casting_s)} of casting.</p>`:u} ${wv(e,n)}`}function wv(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":T(pt(a.units,l)),s=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?T(pt(a.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
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
                <dd>${x(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${bn(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function bv(t,e){let n=Kf(t,e);if(!n)return u;let o=tt(t);return at(r`<b>${T(et(a.units,yt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Kf=(t,e)=>Nf(t.dust,S(Yt),F("run",`/dust/${e}/name`),e);function yv(t,e){let n=Kf(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=A({key:`set-up.dust.${e}`,label:n.name,note:tt(t),shown:et(a.units,yt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Gf(t){let e=t?.cut;return Ct({name:"cut",title:"Cut",drawing:t&&(()=>Xe("cut",t)),result:e?vv(t,e):at("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${e?kv(t,e):u}
        <div class="all-questions">${wf()}</div>`})}var vv=(t,e)=>at(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${T(O(a.units,t.piece.fresh_g))} on average, fresh.`);function kv(t,e){return r`<div class="side">${Qe("cut",t)}</div>
    <div class="weights">
      ${A({key:"cut.bar",label:"A bar on average, fresh",note:xv(e),shown:O(a.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${A({key:"cut.offcuts",label:"Offcuts",shown:O(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${Tv(e)}
    </div>`}function xv(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${x(n,1)} to ${x(o,1)} g`}function Tv(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function Yf(t){return Ct({name:"label",title:"Label",drawing:Sv,result:at(Rv(t)),about:[["run","/label"]],form:()=>r`<div class="more">${Of()} ${t?vl(t):u}</div>`})}function Rv(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${T(O(a.units,e,0))}</b>, sold in the ${t.label.market}.`}var Sv=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var en="/pour/layers",tn={at:en,in_order:!0},Fl=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],or=()=>S(tn);function Av(){let t=e=>or().some(n=>e in n);return Fl.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Qf(t){let e=or(),n=Av();return e.length?r`<h3>
      Layers, lowest first ${t&&tt(t)?r`<small>${tt(t)}</small>`:u}
    </h3>
    ${k({question:"All of them by",at:en,is_told_elsewhere:!0,chosen:n,answers:Fl,puts:o=>Dv(o,t)})}
    <div class="items">${e.map((o,i)=>Mv(o,i,n,t))}</div>
    ${K(tn,"One more layer on top",()=>V(tn,{name:Pv(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${K(tn,"Pour it in layers",()=>V(tn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Pv(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function Xf(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function Dv(t,e){let n=or(),o=a.is_old?void 0:e,i=(s,l)=>{let d=Xf(o,s,l);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${x(d.to_mm-d.from_mm,3)} mm`:`${x(d.mass_each_g,3)} g`};return n.map((s,l)=>{let d=nr(l),c=t!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,l)}}})}var nr=t=>X("run",`${en}/${t}`,[...Fl.map(([e])=>e),"rest"]);function Mv(t,e,n,o){let i=`${en}/${e}`,s=String(t.name)||`Layer ${e+1}`,l=Xf(o,t,e);return r`<div class="part" id=${U(tn,e)} role="group" aria-label="Layer ${s}">
    ${l&&o?Ov(o,l,e):r`<p class="part-title">${s}</p>`} ${I("run",i)}
    ${Cv(t,e,n,s)}
    ${o&&l?l.colours.map((d,c)=>Fv(o,d,e,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${Iv(i,s)} ${Wv(i,e)}
        ${Z(tn,e,s)}`})}
  </div>`}function Ov(t,e,n){return A({key:`pour.layer.${n}`,label:e.name,note:`${$a(pt(a.units,e.to_mm-e.from_mm))} thick, ${$a(O(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?O(a.units,e.g):et(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function Fv(t,e,n,o){return A({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${x(e.teaspoons,1)} tsp`:"",shown:_n(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function Cv(t,e,n,o){if(n==="parts")return Lv(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${en}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?Ev(e,n):Bv(e,n)}
    >
      Takes the rest
    </button>`}function Lv(t,e,n){let o=`${en}/${e}/parts`,i=s=>()=>{h({typed:void 0}),W("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function Bv(t,e){let n=or().map((o,i)=>i===t?{...nr(i),rest:!0}:o.rest?{...nr(i),[e]:""}:o);L("run","takes the rest",en,n)}function Ev(t,e){let n=`${en}/${t}`;L("run","amount of the layer",n,{...nr(t),[e]:""},mt("run",`${n}/${e}`))}function Iv(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${S(n).map((o,i)=>{let s=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${U(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${Z(n,i,l)}
      </div>
      ${I("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Ve("run",s,l)}
    </div>`})}
  ${K(n,"Add a colour",()=>V(n,{name:"",rate:""},"colour"))}`}var Zf=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function Wv(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===S(tn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Ae({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${k({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Zf,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Zf.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var ae=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Cl(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=ae()==="depth"?n-o:o;h({typed:void 0}),W("run",`/pour/line/${ae()}`,`${x(i,2)} mm`)}function th(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Zn($(a.run.now,`/pour/line/${ae()}`));return n===void 0?t.pour.below_brim_mm:ae()==="depth"?e-n:n}function Hv(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,s)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,s)}function jv(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=th(t),{share:o,h:i}=Ef(t,e-n),s=c=>Hv(c,p=>Cl(t,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Cl(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${x(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${T(pt(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function Nv(t){let{pour:e}=t,n=T(pt(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=tt(t);return at(r`${o}, <b>${T(O(a.units,e.mass_each_g))}</b> ${i}; make
      <b>${T(O(a.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var eh=()=>ae()==="depth"?"Depth":"Below brim";function nh(t){return Ct({name:"pour",title:"Pour",drawing:t&&(()=>Xe("pour",t)),result:t?Nv(t):at(`${Uv()}.`),about:[["run","/pour"]],form:()=>r`${t?zv(t):qv()}
        <div class="more">${ir("pour")} ${Qf(t)} ${Ds("pour")}</div>`})}function Uv(){let t=F("run",`/pour/line/${ae()}`);return t?`${t} ${ae()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function zv(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Cl(t,th(t)+i);return r`<div class="side">
      ${Qe("pour",t,jv(t))} ${oh(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:eh(),at:`/pour/line/${ae()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${A({key:"pour.each",label:"Weigh into each",shown:O(a.units,e.mass_each_g),note:`${x(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${A({key:"pour.mm",label:"1 mm more or less",shown:_t(a.units,e.ml_per_mm,2),note:`${ge(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${A({key:"set-up.pour.make",label:"Base to make",note:tt(t),shown:O(a.units,e.make_g),of:`${n}.make_g`})}
      ${A({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var qv=()=>r`<div class="side">
    ${oh()} ${I("run","/pour/line")}
    ${f({label:eh(),at:`/pour/line/${ae()}`,unit:"mm"})}
  </div>`,ir=t=>r`<button type="button" @click=${()=>qt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function oh(t){let e=n=>{if(n===ae())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;L("run","pour line","/pour/line",{[n]:o===void 0?"":`${x(o,3)} mm`})};return rt("The pour line is measured",ae(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var Jv=[0,50,80,100];function ih(t){let e=t?.pipe;return Ct({name:"pipe",title:"Pipe",drawing:e&&(()=>Xe("pipe",t)),result:e?Vv(t,e):at("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?Kv(t,e):Gv()})}function Vv(t,e){let n=tt(t);return at(r`Pipe <b>${x(e.volume_each_ml,0)} ml</b> on each, ${T(O(a.units,e.mass_each_g))} at this
      whipped density; make <b>${T(O(a.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function Kv(t,e){return r`<div class="side">
      ${Qe("pipe",t)}
      ${A({key:"pipe.each",label:"Topping on each",shown:_t(a.units,e.volume_each_ml),note:`${x(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${A({key:"set-up.pipe.make",label:"Topping to make",note:tt(t),shown:O(a.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${A({key:"pipe.density",label:"Whipped density",note:`overrun ${x(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${ir("pipe")}
    </div>
    <div class="weights">${Ga(e)} ${lh()} ${Yv(t)} ${nk(t)}</div>
    <div class="more">${Ka(e)} ${Va()}</div>`}var vi=t=>t===0?"pipe":`pipe.whipping${t}`,ki=(t,e)=>`${t.place}.pipe.whippings.${e}`;function sh(t,e){let n=ds(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function Gv(){return r`<div class="more">${Ka()}</div>
    <div class="side">${lh()} ${g("run","/pipe/whip_now")===void 0?u:ah()}</div>
    <div class="weights">${Ga()} ${ir("pipe")}</div>
    <div class="more">${Va()}</div>`}var rh=t=>tt(t)?r`<small>${tt(t)}</small>`:u;function Yv(t){return r`<h3>Today's bowl ${rh(t)}</h3>
    ${ah()} ${t.whippings.map((e,n)=>Zv(t,e,n))}`}function Zv(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${sh(t,e)}
  ${o==null?u:A({key:`${vi(n)}.now`,label:"Enough for",note:s,shown:[it(o,"piece"),""],size:"weigh",of:`${ki(t,n)}.pieces_now`})}
  ${Xv(t,e,n)}`}function ah(){let t=g("run","/pipe/whip/holds"),e=t===void 0?pi():{holds:t,net:""};return Ae({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:Qv})}function Qv(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${mi("/pipe/whip_now")}
  </div>`}function Xv(t,e,n){return e.readings?.length?P({name:`${vi(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>tk(t,e,n)}):u}function tk(t,e,n){return r`<table class="readings">
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
              <th scope="row">${x(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${x(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${bn(`${vi(n)}.readings`,"Show the calculation",`${ki(t,n)}.readings`)}`}function lh(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(F("run",t))?.[1]?.replace(",",".")),n=Kt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Yn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${Jv.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>W("run",t,`${o} %`)}
          >
            ${ek(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function ek(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function nk(t){let e=t.whippings.map(i=>({one:i,words:ok(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${rh(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${sh(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${bn("pipe.limits","How the limits come about",`${ki(t,0)}.limits`)}`}function ok({piping_s:t,lye_spoonfuls:e}){return[t?`${ze(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${ze(e.altogether_s)}`:""].filter(Boolean).join("; ")}function dh(t){return Ct({name:"lye",title:"Lye",drawing:sk,result:t?uh(t).map(ik):at("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${uh(t).map(rk)} ${lk(t)}</div>`:u}
        <div class="more">${Pf()} ${Df(t)}</div>`})}function uh(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let l=ds(t,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:ki(t,s),pieces:e,key:vi(s)}});return[n,...o]}function ik({title:t,batter:e,slot:n,pieces:o}){let i=Ue(n,o).length?" \u26A0":"";return at(r`${t}: ${x(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Jt(e.superfat_percent.effective)}${i}</b>.`)}var sk=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function rk({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=Ue(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${A({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${x(n.water_to_pure_alkali,2)} : 1 to alkali; water ${x(n.water_percent_of_fats,1)} % of the fats`,shown:[`${x(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${A({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Jt(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${Xo(t,c,i)} ${ch(n.superfat_percent)} ${ak(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function ch(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,l=`It lies between ${Jt(e)} and ${Jt(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Jt(o)} and ${Jt(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return _a(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function ak(t,e,n){return t.heat?r`${ph(t.heat)} ${bn(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function ph(t){let e=o=>T(ap(a.units,o)),n=t.cooling.map(o=>`${o.shortest_min*60?ze(o.shortest_min*60):"at once"} to ${ze(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at
    ${e(t.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function lk(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,s,l,d,c="")=>A({key:`pot.${i}`,label:s,note:c,shown:l,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${x(e.strength_percent,1)} %${tt(t)&&`; ${tt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",et(n,yt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,et(n,yt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",et(n,yt(e,"lye_")),"lye_g",uk(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,et(n,yt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Jt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,et(n,yt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Xo(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?ch(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${T(et(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?ph(e.heat):u}
  </div>`}function uk(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=yt(t,"lye_"),i=et(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${T(i)} with the pot: make up with water to that after cooling`}var xi=new Map,dk=()=>xi.clear(),ck=t=>typeof t?.owned=="number"?t.owned:void 0;function Ll(t){let e=Ot(t,a.files?.moulds);return xi.has(e)||(xi.set(e,void 0),pk(e)),xi.get(e)}async function pk(t){try{xi.set(t,ck(ot((await $t(t)).text))),z()}catch(e){if(!(e instanceof v))throw e}}async function mh(t,e){let n=Ll(t);n!==void 0&&(W("studio",e,n),E(`${n} kept in the studio`),await mk(Ot(t,a.files?.moulds)),Y())}async function mk(t){let e=await Mt(Dt,t);e.shipped||e.theirs||(ht(e,C(e.now,"/owned",void 0)),await me(e),dk())}var fk={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},fh=t=>({run:t,studio:t}),Bl=t=>fh(`/losses/${t}`);function El(t,e){return fk[t].map(({name:n,label:o,unit:i,optional:s})=>Rt(fh(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var xn={run:"/money/currency",studio:"/currency"},Il={run:"/money/prices",studio:"/prices"};function _h(){let[t,e]=[g("run",xn.run),g("studio",xn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[xn,Il]}var hh=()=>a.plan?.piece.cost?.materials.map(t=>t.name)??[],gh=t=>a.fats.find(e=>e.id===t)?.name??t;function $h(){if(vn(xn)===void 0)return r`<button type="button" @click=${hk}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${At(e)}/${n}`;return{run:Il.run+o,studio:Il.studio+o}};return r`<div class="row">
      ${Rt(xn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${hh().map(e=>r`<div class="row">
            ${Rt(t(e,"paid"),{label:`${gh(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
            ${Rt(t(e,"for"),{label:`for how much ${gh(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
          </div>`)}
    </div>
    ${hh().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function hk(){let t=Tt()?"studio":"run",e=t==="studio"?xn.studio:xn.run;L(t,"Prices added",e,"",mt(t,e))}var yo=t=>({run:t,studio:t}),Wl=t=>({run:`/pipe/${t}`,studio:`/${t}`}),gk=yo("/scales"),wh=yo("/spoilage"),_k=yo("/pots");function Hl(t){return Ct({name:"studio",title:"My studio",result:at($k()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>wk(t)})}function $k(){let t=a.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function wk(t){let e=bk(t),n=e.flatMap(o=>o.all);return r`${Tt()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Ua(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${lo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>`}function bk(t){let e=Ht(),n=[{title:"Scales",all:[gk],body:yk},{title:"Losses",all:[Bl("pour"),...e?[Bl("pipe")]:[]],body:()=>vk(e,t)},{title:"Rejects",all:[wh],body:xk},{title:"Pot and lye jug",all:[_k],body:Tk},{title:"Moulds owned",all:bh().map(({shared:o})=>o),body:Sk},{title:"Prices paid",all:_h(),body:$h}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Wl),body:Rk},{title:"Weigh-cups",all:[],body:nm}),Tt()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[bo],body:Dl}),n}function yk(){let t=(e,n)=>r`${Rt(yo(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Rt(yo(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function vk(t,e){return r`<div class="row">
      ${El("pour",t?"Base":void 0)} ${t?El("pipe","Topping"):u}
    </div>
    ${e?kk(e):u}`}function kk({pour:t,pipe:e,...n}){let o=tt({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:l,lost_g:d})=>`${s}: ${T(O(a.units,l))} in the pieces, ${T(O(a.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var xk=()=>Rt(wh,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function Tk(){let t=(e,n,o)=>Rt(yo(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function Rk(){let t=(n,o,i,s=!1)=>Rt(Wl(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>vn(Wl(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function bh(){return["/pour",...S(ft).map((e,n)=>wo(n))].flatMap(e=>{let n=F("run",`${e}/mould`);return n?[{mould:n,shared:{run:hf(e),studio:`/moulds_owned/${At(za(n))}`}}]:[]})}function Sk(){return r`<div class="row">
    ${bh().map(({mould:t,shared:e})=>{let n=a.files?.moulds.find(s=>s.file===t)?.name??t,o=vn(e)===void 0?Ll(t):void 0,i=()=>{mh(t,`/moulds_owned/${At(za(t))}`)};return r`${Rt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&Tt()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function jl(t){let e=t&&Gn(t);return r`${Pk(t)}
    <div class="set-up">${yh(e)} ${Ak()} ${Hl(e)}</div>`}function yh(t){return r`${nh(t)} ${Ht()?ih(t):u}
  ${Hf()?Uf(t):u} ${jf()?qf(t):u}
  ${Gt()?Gf(t):u} ${dh(t)} ${Pl()?Yf(t?.whole):u}`}function Ak(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${Ht()?u:r`<button type="button" @click=${om}>Add a topping</button>${im()}`}
      ${Sf()} ${$f()}
      ${Pl()?u:r`<button type="button" @click=${Mf}>Draft the label</button>`}
    </div>
  </section>`}function vh(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${ro("Mould","/pour/mould",a.files?.moulds)}
    ${ro("Base","/pour/formula",a.files?.formulas)}
    ${Ht()?ro("Topping","/pipe/formula",a.files?.formulas):u} ${t}
  </div>`}function Pk(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?r`<p class="aside">${a.run.now.note}</p>`:u}
    ${vh(t?Dk(t):u)}
    <div class="batches">${t?Ff(t):u} ${Rl()}</div>
  </section>`}function Dk(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:l}=t.pieces,d=bt(t)?`${l} batches, ${it(o,"filling")}`:cs(o,i);return A({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function Mk(){let e=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(Ok);return[Vt({part:"Run"},()=>[vh(),Rl()]),...e.map(n=>Vt({part:String(a.formulas[n].now.name||"Formula")},()=>Wm(n))),yh(),Hl()]}var Ok=(t,e,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[t])===e;gp(Mk);var Fk={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function kh(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(l=>r`<li class=${l.severity}><strong>${Fk[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function xh(t,e){let n=t?.batches.findIndex(({numbers:l})=>l.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function vo(t){let e=Un(t);return e?.finished_at?"done":e||zn(t)?"under way":"not begun"}var Ck=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:t})=>t));function Lk(t){let{chosen:e}=a.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>vo(s)===i);return o("under way")??o("not begun")??1}function Nl(){let t=Ck(),e=Lk(t),n=Un(e),o=xh(a.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?xh(n.plan,e):o}}var Me=({kept:t})=>!t&&a.is_old,ko=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var Bk=6,Ek={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Rh({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${vo(i)}`;return e>Bk?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>Th(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:rt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${Ek[vo(i)]}</span> ${i}<small>
          ${vo(i)}</small
        >`]),i=>Th(Number(i)))}function Th(t){lc(t),E(`Batch ${t}, ${vo(t)}`)}var sr="";function Sh(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return Ik(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!hn(n,l).is_done).length,s=()=>i?Ah(e.id):void Xr(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Dh(e.begun_at)}; its weights stay as they were then.</p>
    ${sr===e.id?Ph(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Xr(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${zn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function Ik({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Dh(n)}.</p>
    ${sr===o?Ph("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{zo(e)}):r`<button type="button" @click=${()=>Ah(o)}>Start this batch anew</button>`}
  </div>`}function Ah(t){sr=t,z(),ct(N("batch-stays"))}function Ph(t,e,n){let o=()=>{sr="",z(),ct(N("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var Wk=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Dh=t=>Wk.format(new Date(t));var Hk={pour:"Base",pipe:"Topping"},Mh=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Oh(t,e){let[n,o]=[Mh(t),Mh(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,l=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${Hk[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Ul=3,zl=new Map,ql="";function jk(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=a;if(s&&!nu(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Q(s)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=Oh(n.vessels,o.vessels),d=new Set(ko(n).map(({text:p})=>p)),c=ko(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function Fh(t){let e=jk(t),{kept:n}=t;if(!e||!n)return u;if(zl.get(n.id)===e.mark)return zk(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${Nk(e)}
    </p>
    ${Uk(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${gn}</strong> As it is now: ${i}</p>`)}
    ${ql===n.id?Vk(t):qk(t,e)}
  </div>`}function Nk({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Ul;return r`${t.slice(0,Ul).join("; ")}${n>0?` and ${n} more.`:"."}`}var Uk=({told:t})=>t.length>Ul?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function zk(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(zl.delete(t),z())}>What has changed</button>
  </div>`}function qk(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{zl.set(o,e),z(),ct(N("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>Jk(t)}>Start this batch anew</button>`:u}
  </div>`}function Jk(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void zo(t.number);ql=o,z(),ct(N("keep-weighing"))}function Vk(t){let e=Object.keys(t.kept.ticks).length,n=()=>{ql="",z(),ct(N("run-title"))},o=()=>{n(),zo(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Ch=({text:t})=>r`<p class="danger"><strong>${gn}</strong> ${t}</p>`;function Lh(t){let e=new Set(a.dangers.run.map(({text:o})=>o)),n=ko(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Ch)}</div>`:u}var Kk=({vessel:t})=>["lye","lye_pot","share"].includes(t),Gk=({batter:t},e)=>!t||!e.batter||t===e.batter;function Bh(t,e){if(!Kk(e))return u;let n=ko(t).filter(o=>Gk(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Ch(o)} ${Yk(o)}`)}</div>`:u}function Yk({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${Qk}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>Zk(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function Zk(t){qt(t),requestAnimationFrame(()=>ct(mt(t,"/superfat")))}function Qk(){h({view:"watch"}),ct(N("watch-title"))}var Jl=(t,e)=>r`<p class="do ${Me(t)?"old":""}">${e}</p>`;function Eh(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${T(pt(a.units,o))} below the brim`;return Jl(t,r`${s}, <b>${T(O(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Ih(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Jl(t,r`Whip until the level weigh-cup holds <b>${T(O(a.units,n.net_g))}</b>.`):u}function Wh(t,{batch:e}){let{pipe:n}=e;return n?Jl(t,r`Pipe <b>${x(n.volume_each_ml,0)} ml</b> on each, ${T(O(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Hh(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[_e(n)===o?n:e,""]}function jh({batch:t,plan:e,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return Xk(o,i,t,n);case"layers":return tx(i,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Vl(i.name,t.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:Vl(i.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let s=e.decorations.length===1?0:-1;return s<0?void 0:`decorations.${s}.make_g`}case"share":return}}function Vl(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function Xk(t,e,n,o){let i=Number(/^pipe\.(\d+)\./.exec(t.key)?.[1]??1)-1,[s,l]=t.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],d=(s?.ingredients??[]).findIndex(({name:c,goes_into:p})=>c===e.name&&p===t.vessel);return d<0?void 0:`${l}.ingredients.${d}.g`}function tx(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Vl(t.name,e[o].colours,`${n}.${o}.colours`)}function Kl(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>hn(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Nh(n)}>
    <div class="vessel-head">
      <h3 id=${Nh(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Bh(e,n)}
    ${Gs(n.rows,({key:s})=>s,s=>ex(t,e,n,s))}
  </section>`}var Nh=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function ex(t,e,n,o){let{is_done:i,is_waiting:s}=hn(t.number,o.key),[l,d]=Hh(a.units,o),c=Me(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${H(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>nx(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${ox(t,e,n,o)}
  </div>`}function nx(t,{mark:e},n,o){if(!Me(t))return sc(t.number,e,n.key,o.checked);o.checked=!o.checked,E("Not ticked: what is struck through is not to be weighed.")}function ox(t,e,n,o){let{planned:i}=t,s=i&&i.mark===e.mark?jh(i,n,o):void 0;if(s===void 0)return u;let l=`weigh.${t.number}.${o.key}`,d=a.open.has(l),c=`sum-${l.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${d?"true":"false"}
      aria-controls=${d?c:u}
      @click=${()=>ce("open",l)}
    >
      ${d?"\u2013":"="}
    </button>
    ${d?r`<div class="sum" id=${c}>${Ea(s)}</div>`:u}`}function Gl(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Uh(t,e){let{planned:n,whip_today:o}=a;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||ix(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Yl=!1;async function ix(t,e){let{planned:n}=a;if(Yl||!n)return;Yl=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Ri({...n,run:C(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...sx(s,t)}})}catch(s){if(!(s instanceof v))throw s;h({whip_today:{...o,complaint:Q(s.complaint)}})}finally{Yl=!1}}function sx(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Ql,Zl,rx=t=>Ql??(_e(t)==="oz"||!t&&a.units==="us"?"oz":"g");function zh(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=Zr(t.number),i=rx(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Te("weigh_cup")}</div>
    ${se("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${H(Zl??o)}
        ?disabled=${s}
        @input=${l=>Zl=l.target.value}
        @change=${l=>lx(t,e,l.target.value,i)}
      />
      ${rt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],ax)}
    </div>
    ${ux(t,e,n,o)} ${cx(e,n)}
  </div>`}function ax(t){Ql=t,z()}function lx(t,{mark:e},n,o){Zl=void 0;let i=Qn(n)?`${n.trim()} ${o}`:n.trim();if(Ql=void 0,i===Zr(t.number))return z();if(Me(t))return E("Not taken: the weights are not those of what is typed."),z();rc(t.number,e,i)}function ux(t,e,n,o){if(!o)return u;let i=Uh(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,l)=>r`<p>${dx(s,i.pieces?.[l]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function dx({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${it(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function cx(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
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
                  <th scope="row">${T(O(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${x(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Ti="pour",qh=()=>Nl().kept!==void 0;function Jh(){os();let t=Nl(),e=a.bench.version!==void 0||a.bench.failed!==void 0;return r`<section class="weighing" data-part=${Ti} aria-labelledby="run-title">
    ${px(t)} ${fx(t)}
    ${t.weights&&e?r`${Lh(t.weights)} ${Fh(t)} ${hx(t,t.weights)}`:u}
    ${Sh(t)}
  </section>`}function px(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(a.run.now.name??"")}</h1>
    ${e?r`<p class="which">${mx(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Rh(t)}
    </div>
  </div>`}function mx(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>hn(t.number,d).is_done).length,l=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${l}${he(e,n)}</b>, ${s} of ${i.length} weighed`}function fx({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:l}=a.bench,d=o!==void 0&&zn(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${uc}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function hx(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),l=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Kl(t,e,m));return r`${yx(d,i)}
    <div class="batters ${d?"two":""}">
      ${rr("ahead","To have ready",c(s))}
      ${rr("base",d?"Base":"Batter",gx(t,e,o("pour"),s))}
      ${d?rr("topping","Topping",[...c(o("pipe")),wx(t,e),Gl(o("pipe"),$x(t,e))]):u}
      ${rr("after","At the end",c(l))}
    </div>`}var rr=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function gx(t,e,n,o){let i=({vessel:l})=>l==="layers",s=l=>l.map(d=>Kl(t,e,d));return[...s(n.filter(l=>!i(l))),Eh(t,e),...s(n.filter(i)),Gl([...o,...n],_x(t,e))]}var Vh=(t,e,n=u)=>r`<p class=${Me(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>Jt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,_x=(t,{batch:e})=>Vh(t,[e.pour],Yn("superfat_as_weighed")),$x=(t,{batch:e})=>Vh(t,e.pipe?.whippings??[]),wx=(t,e)=>r`${Ih(t,e)} ${zh(t,e)} ${Wh(t,e)}`,bx={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function yx(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>bx[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Ti)||(Ti="pour"),r`<div class="narrow">${rt("What is shown",Ti,o,vx)}</div>`)}function vx(t){Ti=t,z(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Kh=()=>r`${mo(qh()?"No new weights can be given.":void 0)} ${Jh()}`;var kx={"set-up":jl,watch:kh,money:sf,mould:uf,print:ff};function Gh(t){let e=r`${ts().map(o=>to(o))} ${Xi().map(eo)}`;if(t==="weigh")return r`${e} ${Kh()}`;let{plan:n}=a;return r`${e} ${mo()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?kx[t](n):xx(t)}`}function xx(t){return a.complaint?t==="set-up"?jl():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var Tx=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Zh(){let t=a.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${Tx}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=Os(t.sell),s=e.trim()&&n&&o&&i,l=()=>{Ft(async()=>{await as({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${H(e)}
          @input=${d=>y(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Yh(t,"mould","Mould",Rx())} ${Yh(t,"formula","Base",Sx())}
      ${Fs("new-run-sell",t.sell,d=>y(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var Rx=()=>[...(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...a.catalogue.map(t=>[t.path,t.name])],Sx=()=>(a.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Yh(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>y(t,{[e]:l.target.value})}>
      <option value="" .selected=${H(t[e]==="")}>choose ...</option>
      ${o.map(([l,d])=>r`<option value=${l} .selected=${H(l===t[e])}>${d}</option>`)}
    </select>
  </div>`}var Ax=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Xh(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped).sort(Ax),n=t.filter(o=>o.shipped);return r`${fo("Runs")} ${Zh()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?kn(e,Qh):r`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${kn(n,Qh)}
    </section>`}function Qh(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,l=[e===void 0?"":it(e,"piece"),n??"",o?`due ${Xn(o)}`:"",i?`made ${Xn(i)}`:s?`changed ${Xn(s)}`:""].filter(Boolean);return ho({kind:un,one:t,facts:l,picture:Px(n),open:()=>Ne(t.file)})}var Px=t=>a.files?.moulds.find(e=>e.name===t)?.file??a.catalogue.find(e=>e.name===t)?.path;var ng=document.getElementById("page");function og(){let{view:t,fault:e}=a;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${tf()} ${Zc()}
    <main id="main" tabindex="-1" data-view=${t} class=${a.is_old&&!Zt(t)?"old-now":""}>
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${Mx()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var Dx={runs:Xh,formulas:Jm,moulds:Vm};function Mx(){let{view:t,fault:e}=a;return be(t)?Gh(t):Zt(t)?Dx[t]():t==="formula"?Im():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Uu(()=>{Sm(),ue(og(),ng),Cx()});ue(og(),ng);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||Zt(a.view)&&!a.mould)return;t.preventDefault();let{undo:e,redo:n}=Ys();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Pc();j(a.run)&&ne()});function Ox(){if(!a.run.file)return Xl();h({fault:void 0}),j(a.run)&&ne(),Y()}function Xl(){h({fault:void 0}),Lm().catch(t=>{h({fault:Fx(t)}),t instanceof v&&t.may_pass&&window.setTimeout(Xl,2e3)})}function Fx(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var tg=new ResizeObserver(([{target:t}])=>ig(t.offsetHeight)),eg=null;function Cx(){let t=document.querySelector(".foremost");t!==eg&&(tg.disconnect(),t?tg.observe(t):ig(0),eg=t)}var ig=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Kc();Cm();eu(t=>{po(),t&&Ox()});Xl();
